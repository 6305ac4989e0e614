package icequill.cli.terminal;

import java.util.Iterator;
import java.util.List;

/**
 * Says to the shell's completion whose names complete a word. The shop's book has them, which nobody knows when the completion is made;
 * so a mark stands for them, in whose place the build puts a question to the program.
 */
public abstract class Completed implements Iterable<String> {

    /** What the mark begins with; the kind of names follows. */
    public static final String MARK = "names-of-";

    private final String kind;

    Completed(String kind) {
        this.kind = kind;
    }

    @Override
    public final Iterator<String> iterator() {
        return List.of(MARK + kind).iterator();
    }
}
