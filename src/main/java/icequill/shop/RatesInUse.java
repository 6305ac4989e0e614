package icequill.shop;

import icequill.files.pricing.RatesFolder;
import icequill.files.pricing.RatesVersion;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.papers.Adoption;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * By what a shop prices and prints in one run: its folder, or where offices share a book the version that is in force there, whatever
 * their folders hold.
 *
 * @param folder where the files lie
 * @param version of these files; or why there is none
 * @param isShared whether the version comes into force on purpose only
 */
public record RatesInUse(Path folder, ShopSettings settings, Validated<RatesVersion> version, boolean isShared) {

    private static final Problem NOT_YET = new Problem(Code.MISSING, Place.NOWHERE,
            "no rates are in force yet in the book that the offices share", "icequill rates adopt");

    private static final Problem CHANGED = new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
            "other rates came into force while this was worked out, so nothing was stored",
            "the same again, which goes by them");

    /** Those of a folder. They are read again until nobody changes them meanwhile, so that the version is what was read. */
    static RatesInUse of(Path folder, boolean isShared) {
        RatesFolder files = new RatesFolder(folder);
        Validated<RatesVersion> version = files.version();
        while (true) {
            ShopSettings settings = ShopSettings.read(folder);
            Validated<RatesVersion> now = files.version();
            if (now.map(RatesVersion::hash).equals(version.map(RatesVersion::hash))) {
                return new RatesInUse(folder, settings, version, isShared);
            }
            version = now;
        }
    }

    /** Those that are in force in a book that offices share; the folder's until some are. */
    static RatesInUse shared(Path folder, Validated<Optional<RatesVersion>> known) {
        return switch (known) {
        case Validated.Valid<Optional<RatesVersion>>(Optional<RatesVersion> inForce) -> inForce
                .map(version -> switch (earlier(version, folder)) {
                case Validated.Valid<RatesInUse>(RatesInUse use) -> use;
                case Validated.Invalid<RatesInUse>(List<Problem> problems) -> unknown(folder, problems);
                }).orElseGet(() -> new RatesInUse(folder, ShopSettings.read(folder),
                        Validated.invalid(NOT_YET), true));
        case Validated.Invalid<Optional<RatesVersion>>(List<Problem> problems) -> unknown(folder, problems);
        };
    }

    /** A version that the book holds, laid out anew. */
    static Validated<RatesInUse> earlier(RatesVersion version, Path shop) {
        return RatesCopy.of(version, shop)
                .map(copy -> new RatesInUse(copy, ShopSettings.read(copy), Validated.valid(version), true));
    }

    /** The version in force in a book; empty where there is none yet. */
    static Validated<Optional<RatesVersion>> inForce(Reading open) {
        return Validated.valid(open.rates().inForce().map(Adoption::version).flatMap(open.rates()::version));
    }

    private static RatesInUse unknown(Path folder, List<Problem> problems) {
        return new RatesInUse(folder, ShopSettings.read(folder).with(problems), new Validated.Invalid<>(problems),
                true);
    }

    /** The version that a paper names which is issued in a transaction; with a book of one office it comes into force by that. */
    public Validated<RatesVersion> forPaper(Transaction open) {
        return version.then(used -> {
            if (!isShared) {
                open.adopt(used);
                return Validated.valid(used);
            }
            return open.rates().inForce().filter(adoption -> adoption.version().equals(used.id())).isPresent()
                    ? Validated.valid(used)
                    : Validated.invalid(CHANGED);
        });
    }
}
