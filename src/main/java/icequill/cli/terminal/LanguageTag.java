package icequill.cli.terminal;

import icequill.files.yaml.Languages;
import icequill.party.Language;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A language by its code, of those that there are words for. */
public final class LanguageTag implements ITypeConverter<Language> {

    @Override
    public Language convert(String text) {
        return Language.ofTag(text.toLowerCase(Locale.ROOT)).filter(Languages::isKnown)
                .orElseThrow(() -> new TypeConversionException("there are no words for the language \"" + text
                        + "\", only for: " + Languages.known().stream().map(Language::tag)
                                .collect(Collectors.joining(", "))));
    }
}
