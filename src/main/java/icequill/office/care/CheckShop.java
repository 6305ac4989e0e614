package icequill.office.care;

import icequill.files.form.BookSettings;
import icequill.files.form.DatabasePassword;
import icequill.files.yaml.ShippedMarks;
import icequill.office.billing.InvoicedPayments;
import icequill.outlook.LookAhead;
import icequill.outlook.SiteForecast;
import icequill.papers.WorkSheetAssembly;
import icequill.party.Certificate;
import icequill.party.Site;
import icequill.plans.CatchUpAssembly;
import icequill.plans.PlanContext;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.AccountLoader;
import icequill.shop.AgreementLoader;
import icequill.shop.BookSites;
import icequill.shop.BrushingLoader;
import icequill.shop.GlyphCheck;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads all of a shop folder and prices every visit, to find every problem before it is in the way. */
public final class CheckShop {

    private CheckShop() {
    }

    /** What a check came to. */
    public record Report(int sites, int visits, List<Problem> problems) {
        public Report {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Checks a folder.
     *
     * @param today by which certificates must still hold
     */
    public static Report check(Path folder, LocalDate today) {
        ShopBook book = ShopBook.of(folder, Clock.systemUTC());
        ShopFolder whole = BookSites.shop(book);
        Problems problems = new Problems();
        readablePassword(folder).ifPresent(problems::add);
        ShippedMarks.of(folder).forEach(value -> problems.add(value.problem()));
        for (String id : whole.sites()) {
            whole.site(id, Place.ofFile("sites")).ifPresent(site -> certificates(site, today, problems));
        }
        List<Path> visits = whole.visits();
        visits.forEach(
                file -> new VisitLoader(whole).read(file, problems).ifPresent(hand -> problems.take(hand.vouched())));
        whole.planned().forEach(file -> new VisitLoader(whole).read(file, problems).ifPresent(
                hand -> problems.take(new WorkSheetAssembly(hand, hand.shop().language()).sheet(today))));
        boolean isPriced = arePricesSound(whole);
        whole.brushings().forEach(file -> new BrushingLoader(whole).read(file, today, problems)
                .filter(hand -> isPriced).ifPresent(hand -> problems.take(hand.sheet(today, Optional.empty()))));
        whole.accounts().forEach(file -> new AccountLoader(whole).read(file, today, problems));
        whole.credits().forEach(whole::credit);
        quotes(whole, today, problems);
        whole.agreements()
                .forEach(file -> new AgreementLoader(whole, new InvoicedPayments(book)::of).read(file, today,
                        problems));
        return new Report(whole.sites().size(), visits.size(), GlyphCheck.report(whole, problems).list());
    }

    /** The password of the book's database, where others may read it. */
    public static Optional<Problem> readablePassword(Path folder) {
        return DatabasePassword.readable(BookSettings.of(folder), folder);
    }

    private static void quotes(ShopFolder whole, LocalDate today, Problems problems) {
        for (Path file : whole.quotes()) {
            if (whole.isMaintenance(file)) {
                new PlanLoader(whole).read(file, today, problems).filter(hand -> arePricesSound(whole))
                        .ifPresent(hand -> plans(whole, hand, today, problems));
            } else {
                new VisitLoader(whole).read(file, problems);
            }
        }
    }

    /** By rates with problems nothing is priced. */
    private static boolean arePricesSound(ShopFolder whole) {
        return whole.problems().stream().noneMatch(problem -> problem.place().file().startsWith("pricing"));
    }

    /** Survey and forecast, as far as the request has them. */
    private static void plans(ShopFolder whole, PlanContext hand, LocalDate today, Problems problems) {
        hand.request().survey().ifPresent(
                survey -> problems.take(new CatchUpAssembly(hand.choices().yardstick(), survey).price()));
        whole.forecast(today).ifPresent(rates -> problems
                .take(SiteForecast.of(hand, rates, whole.energy(), today, LookAhead.USUAL)));
    }

    /** An expired certificate does not stop an invoice, it makes tax due; the office wants to know beforehand. */
    private static void certificates(Site site, LocalDate today, Problems problems) {
        List<Certificate> expired = site.customer().certificates().stream()
                .filter(certificate -> certificate.hasExpiredBy(today)).toList();
        expired.stream()
                .filter(old -> site.customer().certificates().stream()
                        .noneMatch(other -> other.state().equals(old.state()) && other.holdsOn(today)))
                .forEach(old -> problems.add(Code.CERTIFICATE, old.place(),
                        "certificate " + old.number() + " of " + site.customer().name() + " expired on "
                                + old.expires().orElseThrow() + ": tax is due until there is a new one",
                        "a new certificate, or take this one out"));
    }
}
