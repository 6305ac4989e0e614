package icequill.answer.rates;

import java.nio.file.Path;

/** The folder into which a version of the rates was written. */
public record RatesExport(Path folder) {}
