package thrumwright.plan.finding;

import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Support;
import thrumwright.block.WarpLoops;
import thrumwright.yarn.Yarn;

/** What a finding goes by: a number in its unit, or something in the piece. How it is put is said where it is shown. */
public sealed interface Value {
    /** How far a length may be rounded when it is shown. */
    enum Grain {
        /** As a height or a depth. */
        HEIGHT,
        /** Hardly at all. */
        FINE,
        /** As what is cut from a yarn or measured across the warp. */
        CUT,
        /** As all there is of a yarn. */
        TOTAL
    }

    /** Something for each sort of value. */
    interface Teller<R> {
        R length(OfLength length);

        R share(OfShare share);

        R count(OfCount count);

        R yarn(OfYarn yarn);

        R shed(OfShed shed);

        R side(OfSide side);

        R support(OfSupport support);

        R loops(OfLoops loops);
    }

    <R> R told(Teller<R> teller);

    /** @param mm any length, mm */
    record OfLength(double mm, Grain grain) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.length(this);
        }
    }

    /** @param share of 1 */
    record OfShare(double share) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.share(this);
        }
    }

    /** How many. */
    record OfCount(int count) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.count(this);
        }
    }

    /** One of the piece's yarns. */
    record OfYarn(Yarn yarn) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.yarn(this);
        }
    }

    /** How a pick goes. */
    record OfShed(Shed shed) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.shed(this);
        }
    }

    /** Where a pick ends. */
    record OfSide(Side side) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.side(this);
        }
    }

    /** What a hem is to take. */
    record OfSupport(Support support) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.support(this);
        }
    }

    /** What warp loops lie round. */
    record OfLoops(WarpLoops loops) implements Value {
        @Override
        public <R> R told(Teller<R> teller) {
            return teller.loops(this);
        }
    }

    /** @param mm any length, mm, to be shown as a height or a depth */
    static Value height(double mm) {
        return new OfLength(mm, Grain.HEIGHT);
    }

    /** @param mm any length, mm, not to be rounded away */
    static Value fine(double mm) {
        return new OfLength(mm, Grain.FINE);
    }

    /** @param mm a length along a yarn or across the warp, mm, 0 or more */
    static Value cut(double mm) {
        return new OfLength(mm, Grain.CUT);
    }

    /** @param mm a length of all there is of a yarn, mm, 0 or more */
    static Value total(double mm) {
        return new OfLength(mm, Grain.TOTAL);
    }
}
