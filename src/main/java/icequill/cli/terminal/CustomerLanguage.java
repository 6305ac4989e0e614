package icequill.cli.terminal;

import icequill.party.Language;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which language a customer's paper is written. */
public final class CustomerLanguage {

    @Option(names = "--lang", paramLabel = "LANG", converter = LanguageTag.class, description = "Language, en or es. Default: the customer's, else the shop's.")
    private @Nullable Language language;

    public Optional<Language> language() {
        return Optional.ofNullable(language);
    }
}
