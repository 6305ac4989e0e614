package icequill.cli.book;

import icequill.answer.ShopFacts;
import icequill.cli.terminal.BookCommand;
import icequill.office.care.SettingsOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes how the shop is set up. */
@Command(name = "change", mixinStandardHelpOptions = true, description = "Changes settings of shop.yaml and leaves all else there as it is, comments too: all that are given, or none where something would be wrong.", footerHeading = "%nExamples:%n", footer = {
        "  icequill shop change phone=607-555-0142 payment-days=14", "  icequill shop change language=es paper=a4"})
public final class ShopChangeCommand extends BookCommand {

    @Parameters(arity = "0..*", paramLabel = "SETTING=VALUE", description = "Which: name, street, city, region, postal-code, phone, email, language, paper (letter, a4), accent, payment-days, and what agreements say that quotes become: cancel-days, refuse-days, renewal-months; and what it is to be.")
    private Map<String, String> settings = new LinkedHashMap<>();

    @Option(names = "--logo", paramLabel = "FILE", description = "The picture on the shop's papers, a PNG or a JPEG; it is copied into the shop folder.")
    private @Nullable Path logo;

    public ShopChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        SettingsOffice office = SettingsOffice.of(folder(), clock());
        Path picture = logo;
        Validated<Optional<byte[]>> handed = picture == null
                ? Validated.valid(Optional.empty())
                : bytes(file(picture)).map(Optional::of);
        Validated<ShopFacts> changed = settings.isEmpty() && picture == null
                ? Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is to be changed",
                        "a setting and its value, such as phone=607-555-0142, or --logo"))
                : handed.then(bytes -> office.change(settings, bytes, Optional.empty()));
        return show(changed, shop -> printLines(shop.lines()));
    }

    private static Validated<byte[]> bytes(Path file) {
        try {
            return Validated.valid(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(file.toString()),
                    "the file cannot be read: " + unreadable, "a picture that may be read"));
        }
    }
}
