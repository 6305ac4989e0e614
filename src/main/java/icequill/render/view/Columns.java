package icequill.render.view;

import java.util.List;

/** Divides texts over two columns of about the same height. */
final class Columns {

    /** What a text takes besides its letters, in letters: the rest of its last line. */
    private static final int LINE = 30;

    private Columns() {
    }

    /** How many of the texts belong into the first column, by their lengths in letters. */
    static int half(List<Integer> lengths) {
        int whole = lengths.stream().mapToInt(length -> length + LINE).sum();
        int sum = 0;
        int count = 0;
        while (count < lengths.size() && 2 * sum + lengths.get(count) + LINE <= whole) {
            sum += lengths.get(count) + LINE;
            count++;
        }
        return count;
    }
}
