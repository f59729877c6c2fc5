package thrumwright.block;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** A gap that is left unwoven. */
public record OpenWarp(Tag tag, Length height) implements Block {
    public OpenWarp {
        Objects.requireNonNull(tag);
        if (!(height.mm() > 0 && height.mm() <= 2000)) {
            throw new BadMeasure("open-warp.height", Map.of("height", height));
        }
    }

    @Override
    public List<String> stages(int made) {
        return List.of("open-warp.stage.card", "open-warp.stage.above");
    }

    @Override
    public String key() {
        return "open-warp";
    }

    @Override
    public boolean hasHeight() {
        return true;
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(new Amount.Height(height));
    }

    @Override
    public OpenWarp withExtent(Amount other) {
        return withHeight(other.length());
    }

    @Override
    public <R> R of(Cases<R> cases) {
        return cases.openWarp(this);
    }

    @Override
    public OpenWarp mirrored() {
        return this;
    }

    @Override
    public OpenWarp withTag(Tag other) {
        return new OpenWarp(other, height);
    }

    public OpenWarp withHeight(Length other) {
        return new OpenWarp(tag, other);
    }
}
