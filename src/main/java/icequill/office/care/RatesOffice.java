package icequill.office.care;

import icequill.answer.rates.AdoptedRates;
import icequill.answer.rates.RatesList;
import icequill.answer.rates.RatesSheet;
import icequill.answer.rates.ToldChanges;
import icequill.answer.rates.ToldVersion;
import icequill.files.pricing.RatesChange;
import icequill.files.pricing.RatesFolder;
import icequill.files.pricing.RatesVersion;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.papers.Adoption;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The office that keeps the versions of rates, templates and settings by which the shop's papers are made. */
public final class RatesOffice {

    private static final int SHORTEST = 4;

    private final ShopBook book;
    private final ZoneId zone;

    private RatesOffice(ShopBook book, ZoneId zone) {
        this.book = book;
        this.zone = zone;
    }

    public static RatesOffice of(Path folder, Clock clock) {
        return new RatesOffice(ShopBook.byFolder(folder, clock), ShopDay.zone(folder, clock));
    }

    /** Of a shop that is open; it goes by what lies in its folder. */
    public static RatesOffice of(ShopBook book) {
        return new RatesOffice(book.byItsFolder(), ShopDay.zone(book.folder(), book.clock()));
    }

    /** All versions, the newest first. */
    public Validated<RatesList> list() {
        return book.read(open -> Validated.valid(RatesList.of(open.rates(), zone)));
    }

    /**
     * A version, and what is different in it from the one that was in force before it.
     *
     * @param name its id or the beginning of it; empty for the one in force
     */
    public Validated<RatesSheet> show(Optional<String> name) {
        return book.read(open -> named(open, name).map(version -> sheet(open, version)));
    }

    private RatesSheet sheet(Reading open, RatesVersion version) {
        List<Adoption> all = open.rates().adoptions();
        ToldVersion told = ToldVersion.of(version.id(), all, open.rates().papers().getOrDefault(version.id(), 0L),
                zone);
        Optional<RatesVersion> before = all.stream().dropWhile(adoption -> !adoption.version().equals(version.id()))
                .skip(1).findFirst().map(Adoption::version).flatMap(open.rates()::version);
        return RatesSheet.of(told, version, before.map(RatesVersion::id),
                before.map(other -> changes(other, version)).orElseGet(() -> new ToldChanges(List.of())));
    }

    private static ToldChanges changes(RatesVersion before, RatesVersion after) {
        return new ToldChanges(RatesChange.between(before, after));
    }

    /** Writes the files of a version into a folder, where nothing of the same names may lie. */
    public Validated<Path> export(String name, Path target) {
        return book.read(open -> named(open, Optional.of(name))).then(new RatesFolder(target)::write);
    }

    static Validated<RatesVersion> named(Reading open, Optional<String> name) {
        Set<String> known = new TreeSet<>();
        open.rates().adoptions().forEach(adoption -> known.add(adoption.version()));
        List<String> meant = name
                .map(begin -> known.stream().filter(id -> id.equals(begin)
                        || (begin.length() >= SHORTEST && id.startsWith(begin))).toList())
                .orElseGet(() -> open.rates().inForce().map(Adoption::version).stream().toList());
        return meant.size() == 1
                ? Validated.valid(open.rates().version(meant.getFirst()).orElseThrow())
                : Validated.invalid(name.map(wrong -> Problem.unknownName(Place.NOWHERE, "version of the rates", wrong,
                        known)).orElseGet(() -> new Problem(Code.MISSING, Place.NOWHERE, "no rates are in force yet",
                                "icequill rates adopt, or the first paper that is issued")));
    }

    /**
     * Puts the rates, templates and settings of the folder into force for all offices, if nothing is wrong with them.
     *
     * @param sure otherwise nothing is stored, and it is told what would be
     */
    public Validated<AdoptedRates> adopt(boolean sure) {
        return GlyphCheck.report(BookForms.shop(book), new Problems()).or(() -> book)
                .then(valid -> book.ratesInUse().version())
                .then(version -> book.exists()
                        ? book.read(open -> Validated.valid(wouldAdopt(open, version)))
                                .then(planned -> sure ? adopted(planned, version) : Validated.valid(planned))
                        : sure
                                ? adopted(first(version), version)
                                : Validated.valid(first(version)));
    }

    private static AdoptedRates first(RatesVersion version) {
        return new AdoptedRates(version.id(), Optional.empty(), new ToldChanges(List.of()), false);
    }

    private static AdoptedRates wouldAdopt(Reading open, RatesVersion version) {
        return open.rates().inForce().map(Adoption::version)
                .map(id -> new AdoptedRates(version.id(), Optional.of(id), open.rates().version(id)
                        .map(before -> changes(before, version)).orElseGet(() -> new ToldChanges(List.of())),
                        id.equals(version.id())))
                .orElseGet(() -> first(version));
    }

    /** What was shown is what is done: somebody else may have adopted another meanwhile. */
    private Validated<AdoptedRates> adopted(AdoptedRates planned, RatesVersion version) {
        return book.write(open -> inForce(open).equals(planned.before())
                ? Validated.valid(open.adopt(version)).map(done -> planned.adopted())
                : Validated.invalid(BookForms.changed("what rates are in force")));
    }

    private static Optional<String> inForce(Transaction open) {
        return open.rates().inForce().map(Adoption::version);
    }

    /**
     * That the folder of an office holds others than are in force in the book that it shares; empty where it does not share one, and
     * where nobody can tell.
     */
    public static Optional<Problem> differing(Path folder) {
        return of(folder, Clock.systemUTC()).differing();
    }

    private Optional<Problem> differing() {
        if (!book.isShared()) {
            return Optional.empty();
        }
        Problems untold = new Problems();
        return untold.take(book.ratesInUse().version()).flatMap(own -> untold
                .take(book.read(open -> Validated.valid(wouldAdopt(open, own))))
                .filter(planned -> planned.before().filter(id -> !id.equals(own.id())).isPresent())
                .map(planned -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "this folder is not as version " + planned.before().orElseThrow()
                                + " of the rates, which is in force and goes: " + planned.changes().names(),
                        "icequill rates adopt to put the folder's into force, or icequill rates export "
                                + planned.before().orElseThrow() + " DIR for those in force")));
    }
}
