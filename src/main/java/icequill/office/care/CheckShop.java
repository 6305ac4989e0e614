package icequill.office.care;

import icequill.files.form.BookSettings;
import icequill.files.form.DatabasePassword;
import icequill.files.form.Form;
import icequill.files.form.MailSettings;
import icequill.files.yaml.ShippedMarks;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.office.billing.InvoicedPayments;
import icequill.office.billing.StandingInvoices;
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
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.BrushingLoader;
import icequill.shop.GlyphCheck;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads all of a shop, and works out what the book has that is still to come, to find every problem before it is in the way. */
public final class CheckShop {

    private CheckShop() {
    }

    /** What a check came to. */
    public record Report(int sites, int forms, List<Problem> problems) {
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
        ShopBook book = ShopBook.byFolder(folder, Clock.systemUTC());
        Problems problems = new Problems();
        readablePassword(folder).ifPresent(problems::add);
        ShippedMarks.of(folder).forEach(value -> problems.add(value.problem()));
        return book.exists()
                ? problems.take(book.together(open -> Validated.valid(check(open, today, problems))))
                        .orElseGet(() -> new Report(0, 0, problems.list()))
                : new Report(0, 0, GlyphCheck.report(BookForms.shop(book), problems).list());
    }

    private static Report check(ShopBook book, LocalDate today, Problems problems) {
        ShopFolder whole = BookForms.shop(book);
        List<String> sites = problems.take(book.read(open -> Validated.valid(living(open)))).orElse(List.of());
        for (String id : sites) {
            whole.site(id, Place.NOWHERE).ifPresent(site -> certificates(site, today, problems));
        }
        problems.take(book.read(open -> Validated.valid(names(open)))).ifPresent(names -> whole.schedule()
                .ifPresent(schedule -> schedule.sheets()
                        .forEach(dated -> problems.addAll(names.problems(dated.sheet())))));
        List<Form> forms = problems.take(book.read(open -> Validated.valid(forms(open)))).orElse(List.of());
        forms.forEach(form -> check(book, whole, form, today, problems));
        return new Report(sites.size(), forms.size(), GlyphCheck.report(whole, problems).list());
    }

    /** The sites of customers who were not forgotten. */
    private static List<String> living(Reading open) {
        Set<String> customers = open.entries().customers().stream().filter(entry -> entry.forgotten().isEmpty())
                .map(CustomerEntry::id).collect(Collectors.toSet());
        return open.entries().sites().stream().filter(site -> customers.contains(site.customer())).map(SiteEntry::id)
                .toList();
    }

    private static RateSheetNames names(Reading open) {
        return new RateSheetNames(open.entries().customers().stream().map(CustomerEntry::id).toList(),
                open.entries().sites().stream().map(SiteEntry::id).toList());
    }

    /** Whatever papers are still to come of. */
    private static List<Form> forms(Reading open) {
        List<Form> forms = new ArrayList<>();
        open.entries().agreements().stream().filter(entry -> !entry.isForgotten()).map(BookForms::form)
                .forEach(forms::add);
        open.entries().requests().stream().filter(entry -> !entry.isForgotten()).map(BookForms::form)
                .forEach(forms::add);
        open.accounts().accounts().stream().filter(entry -> !entry.isForgotten()).map(BookForms::form)
                .forEach(forms::add);
        Stream.concat(open.entries().plannedVisits().stream(), open.entries().visits().stream())
                .filter(entry -> !entry.isForgotten() && open.entries().withdrawal(entry.id()).isEmpty()
                        && StandingInvoices.visit(open, entry.id()).isEmpty())
                .map(BookForms::form).forEach(forms::add);
        return forms;
    }

    private static void check(ShopBook book, ShopFolder whole, Form form, LocalDate today, Problems problems) {
        switch (form.kind().orElseThrow()) {
        case VISIT, SALE ->
            new VisitLoader(whole).read(form, problems).ifPresent(hand -> problems.take(hand.vouched()));
        case PLANNED_VISIT -> new VisitLoader(whole).read(form, problems)
                .ifPresent(hand -> problems.take(WorkSheetAssembly.ofPlanned(hand, today)));
        case BRUSHING_REQUEST -> new BrushingLoader(whole).read(form, today, problems)
                .filter(hand -> arePricesSound(whole))
                .ifPresent(hand -> problems.take(hand.sheet(today, Optional.empty())));
        case MAINTENANCE_REQUEST -> new PlanLoader(whole).read(form, today, problems)
                .filter(hand -> arePricesSound(whole)).ifPresent(hand -> plans(whole, hand, today, problems));
        case AGREEMENT -> new AgreementLoader(whole, new InvoicedPayments(book)::of).read(form, today, problems);
        case ACCOUNT -> whole.contents().account(form);
        case CUSTOMER, SITE, PAYMENT -> throw new IllegalArgumentException(form.kind().toString());
        }
    }

    /** The password of the book's database or of the mail server, where others may read it. */
    public static Optional<Problem> readablePassword(Path folder) {
        return DatabasePassword.readable(BookSettings.of(folder), folder)
                .or(() -> MailSettings.of(folder).readable(folder));
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
