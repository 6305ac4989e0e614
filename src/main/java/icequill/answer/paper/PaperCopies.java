package icequill.answer.paper;

import java.nio.file.Path;
import java.util.List;

/** Copies of a paper that differ from what was issued. */
public record PaperCopies(List<Path> files) {

    public PaperCopies {
        files = List.copyOf(files);
    }
}
