package icequill.office.asking;

import icequill.answer.RecordedVisit;
import icequill.files.disk.Hash;
import icequill.files.yaml.TreeJson;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.trail.Subject;
import icequill.office.billing.RecordOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Visits of the book as forms to be changed: corrected before they are billed, or recorded as done when they were planned. */
public record KnownVisits(ShopBook book) {

    /** One that is neither billed nor withdrawn, as it stands. */
    public Validated<KnownVisit> find(String id) {
        return book.read(open -> RecordOffice.changeable(open, id).then(entry -> known(open, entry)));
    }

    private static Validated<KnownVisit> known(Reading open, VisitEntry entry) {
        Draft told = Draft.of(TreeJson.branch(entry.data(), "the book's visit " + entry.id()));
        return told.values().containsKey("sold")
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "\"" + entry.id() + "\" is a sale without a visit",
                        "its form anew: icequill export - " + entry.id() + ", then icequill import"))
                : open.entries().siteNow(entry.site()).map(
                        site -> new KnownVisit(entry.id(), site.id(), entry.isPlanned(), version(entry), told));
    }

    /** Who changed one last, and when; empty where the trail does not tell. */
    public Optional<LastChange> lastChange(String id) {
        return book.read(open -> Validated.valid(open.trail().newest(Subject.VISIT, id)
                .map(row -> new LastChange(row.who(), row.at())))).found().flatMap(change -> change);
    }

    private static String version(VisitEntry entry) {
        return Hash.of((entry.isPlanned() + "\n" + entry.data()).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Puts another in its place, unless somebody else changed it meanwhile.
     *
     * @param version of what was changed into this
     */
    public Validated<RecordedVisit> change(TypedVisit visit, String version) {
        return book.write(open -> RecordOffice.changeable(open, visit.id())
                .then(entry -> version(entry).equals(version)
                        ? RecordOffice.of(book).record(visit.name())
                        : Validated.invalid(new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                                "visit \"" + visit.id() + "\" was changed by somebody else since this page was shown",
                                "look at both versions, and keep one"))));
    }

    /** That nobody changed it since a page was shown. */
    public Validated<String> unchanged(String id, String version) {
        return book.read(open -> open.entries().visit(id).then(entry -> version(entry).equals(version)
                ? Validated.valid(id)
                : Validated.invalid(new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                        "visit \"" + id + "\" was changed by somebody else since this page was shown",
                        "look at it anew"))));
    }
}
