package icequill.answer;

import java.nio.file.Path;

/** A file that was written out of the book, and how many papers are in it. */
public record ExportResult(Path file, long papers) {}
