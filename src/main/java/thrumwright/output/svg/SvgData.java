package thrumwright.output.svg;

import thrumwright.output.vector.Outline;

/** The pieces of an outline as SVG tells them, each from the point before, as shortly as can be. */
final class SvgData implements Outline.Taker {
    private static final int HUNDREDTHS = 100;

    private final StringBuilder out;
    private final int left;
    private final int top;
    private char last;
    private int x;
    private int y;

    /** @param left where the outline begins, hundredths of a unit */
    SvgData(StringBuilder out, int left, int top) {
        this.out = out;
        this.left = left;
        this.top = top;
    }

    /** Hundredths, without a nought before the point or after the last digit. */
    static void number(StringBuilder out, int hundredths) {
        int size = Math.abs(hundredths);
        if (hundredths < 0) {
            out.append('-');
        }
        int part = size % HUNDREDTHS;
        if (size >= HUNDREDTHS || part == 0) {
            out.append(size / HUNDREDTHS);
        }
        if (part != 0) {
            out.append('.').append(part / 10);
            if (part % 10 != 0) {
                out.append(part % 10);
            }
        }
    }

    private SvgData command(char letter) {
        if (letter != last) {
            out.append(letter);
            last = letter;
        }
        return this;
    }

    private SvgData value(int hundredths) {
        if (hundredths >= 0 && !Character.isLetter(out.charAt(out.length() - 1))) {
            out.append(' ');
        }
        number(out, hundredths);
        return this;
    }

    private SvgData point(int toX, int toY) {
        return value(toX - x).value(toY - y);
    }

    private void at(int nowX, int nowY) {
        x = nowX;
        y = nowY;
    }

    @Override
    public void move(int toX, int toY) {
        command('M').value(left + toX).value(top + toY);
        at(toX, toY);
    }

    @Override
    public void line(int toX, int toY) {
        if (toY == y) {
            command('h').value(toX - x);
        } else if (toX == x) {
            command('v').value(toY - y);
        } else {
            command('l').point(toX, toY);
        }
        at(toX, toY);
    }

    @Override
    public void curve(int x1, int y1, int x2, int y2, int toX, int toY) {
        command('c').point(x1, y1).point(x2, y2).point(toX, toY);
        at(toX, toY);
    }

    @Override
    public void close() {
        out.append('z');
        last = 'z';
    }
}
