package thrumwright.drawing.hem;

import thrumwright.plan.Hem;

/**
 * How the cloth of a hem runs, seen from the side: u mm along its mid-plane from the hem's outer edge to the front. z goes
 * towards the front from the mid-plane of the front layer, y up from the bend.
 */
interface HemLine {
    /**
     * Where the cloth's mid-plane is.
     *
     * @return {z, y, direction}: the direction in which u grows as an angle, 0 towards the front and π/2 up
     */
    double[] at(double u);

    /** How far the turned edge stands below y = 0, mm. */
    double outside();

    /** From the turned edge to the hem's inner edge, mm. */
    double depth();

    /** How far it reaches behind the mid-plane of the front layer, mm. */
    double behind();

    /** Folded flat, with nothing in it. */
    static HemLine flat(Hem hem) {
        return new Flat(hem, Math.PI);
    }

    /** On its way to that: so far turned back, radians, 0 to π. */
    static HemLine turned(Hem hem, double angle) {
        return new Flat(hem, angle);
    }

    /** Layer upon layer, or turned so far, radians. */
    record Flat(Hem hem, double turned) implements HemLine {
        @Override
        public double outside() {
            return radius() + hem.thickness() / 2;
        }

        @Override
        public double depth() {
            return hem.depth();
        }

        @Override
        public double behind() {
            return hem.stacked() - hem.thickness() / 2;
        }

        /** Of the mid-plane at the outer fold. */
        private double radius() {
            return hem.thickness() / 2 * hem.bends();
        }

        @Override
        public double[] at(double u) {
            double r = radius();
            double half = turned * r / 2;
            double past = u - hem.cloth();
            if (past > half) {
                return new double[] {0, past - half, Math.PI / 2};
            }
            if (past > -half) {
                double back = (half - past) / r;
                return new double[] {-r + r * Math.cos(back), -r * Math.sin(back), Math.PI / 2 - back};
            }
            return raised(inner(-past - half, -2 * r));
        }

        /** A place on the turned-back layer while it isn't turned back wholly: it swings about the bend. */
        private double[] raised(double[] folded) {
            double open = Math.PI - turned;
            double z = folded[0] + radius();
            return new double[] {
                z * Math.cos(open) - folded[1] * Math.sin(open) - radius(),
                z * Math.sin(open) + folded[1] * Math.cos(open),
                folded[2] + open
            };
        }

        /** On the turned-back layer, {@code up} mm above the outer fold's bend. */
        private double[] inner(double up, double z) {
            if (hem.firstTurn().isEmpty()) {
                return new double[] {z, up, -Math.PI / 2};
            }
            double small = hem.thickness() / 2;
            double halfTurn = Math.PI * small / 2;
            double straight = hem.cloth() - hem.firstTurn().get() - Math.PI * radius() / 2 - halfTurn;
            if (up < straight) {
                return new double[] {z, up, -Math.PI / 2};
            }
            double past = up - straight;
            if (past < 2 * halfTurn) {
                double angle = past / small;
                return new double[] {
                    z + small - small * Math.cos(angle), straight + small * Math.sin(angle), -Math.PI / 2 - angle
                };
            }
            return new double[] {z + 2 * small, straight - (past - 2 * halfTurn), Math.PI / 2};
        }
    }
}
