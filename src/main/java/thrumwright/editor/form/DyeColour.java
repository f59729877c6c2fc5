package thrumwright.editor.form;

import thrumwright.yarn.Colour;

/**
 * Colours of yarn by what dyed them, and of fleece as it grew. A name is the trade's; how it looks on a screen is from
 * memory, and no two dye baths give the same.
 */
enum DyeColour {
    MADDER(0xa8432f),
    COCHINEAL(0x9c2748),
    LAC(0x6f2238),
    BRAZILWOOD(0xb65a4a),
    ONION_SKIN(0xc07a2b),
    WELD(0xd2b73c),
    FUSTIC(0xb98f33),
    WELD_ON_INDIGO(0x5d7a3a),
    WOAD(0x6f8fa6),
    INDIGO(0x27446e),
    INDIGO_DEEP(0x1b2a47),
    LOGWOOD(0x4a3a5e),
    CUTCH(0x8a5a3a),
    WALNUT(0x5b4030),
    OAK_GALL(0x3a3836),
    UNDYED_COTTON(0xe9e1cf),
    WHITE_FLEECE(0xf0e9da),
    FAWN_FLEECE(0xcdb594),
    MOORIT_FLEECE(0x7d5539),
    LIGHT_GREY_FLEECE(0xbdb9b0),
    GREY_FLEECE(0x85827c),
    BLACK_FLEECE(0x2f2a27);

    private final int rgb;

    DyeColour(int rgb) {
        this.rgb = rgb;
    }

    Colour colour() {
        return new Colour(rgb);
    }
}
