package thrumwright.drawing.edge;

import thrumwright.drawing.HandWay;

/** How a group of warp ends is worked, stage by stage. */
interface GroupStages {
    /** The group at a stage, from 0. */
    void draw(int stage);

    /** The hand's ways in that stage. */
    void ways(HandWay hand, int stage);
}
