package icequill.cli.terminal;

import icequill.party.Language;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** For whom an answer on the screen is written. */
public final class ReaderOptions {

    @Option(names = "--lang", paramLabel = "LANG", converter = LanguageTag.class, description = "Language, en or es. Default: the shop's.")
    private @Nullable Language language;

    public Optional<Language> language() {
        return Optional.ofNullable(language);
    }
}
