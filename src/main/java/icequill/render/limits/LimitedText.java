package icequill.render.limits;

import java.io.StringWriter;

/** What a template writes, up to a limit. */
public final class LimitedText extends StringWriter {

    /** The largest of our own papers have a hundredth of it. */
    static final int MOST = 5_000_000;

    /** The limit was reached. */
    public static final class Full extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Full() {
            super("more than " + MOST + " characters");
        }
    }

    @Override
    public void write(int sign) {
        room(1);
        super.write(sign);
    }

    @Override
    public void write(char[] signs, int from, int count) {
        room(count);
        super.write(signs, from, count);
    }

    @Override
    public void write(String text) {
        room(text.length());
        super.write(text);
    }

    @Override
    public void write(String text, int from, int count) {
        room(count);
        super.write(text, from, count);
    }

    private void room(int more) {
        if (getBuffer().length() + (long) more > MOST) {
            throw new Full();
        }
    }
}
