package icequill.office.demo;

import icequill.answer.RenewalAdvice;
import icequill.answer.WrittenPaper;
import icequill.office.FitOffice;
import icequill.office.Office;
import icequill.office.PlanOffice;
import icequill.outlook.LookAhead;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The papers of the invented shop's plans: comparisons, agreements, renewal notices.
 *
 * @param progress is told what comes next
 */
record DemoPlans(ShopBook book, DemoEntries entries, Consumer<String> progress) {

    private static final LocalDate COMPARISON_DAY = LocalDate.of(2026, 5, 14);
    private static final String RECORDS = "records/runs.csv";
    private static final LocalDate AGREEMENT_DAY = LocalDate.of(2026, 5, 20);
    /** Each within the days that the laws on record leave. */
    private static final Map<String, LocalDate> NOTICE_DAYS = Map.of("crumb-lane-bakery",
            LocalDate.of(2027, 3, 5), "hotel-fernhill", LocalDate.of(2027, 1, 31), "mercado-del-mar",
            LocalDate.of(2027, 4, 20), "lantern-coffee", LocalDate.of(2027, 4, 20), "tamarack-camp",
            LocalDate.of(2027, 3, 5));

    List<Validated<WrittenPaper>> papers() {
        PlanOffice office = Office.of(book).plans();
        List<Validated<WrittenPaper>> papers = new ArrayList<>();
        for (FormName request : entries.requests()) {
            progress.accept("Comparison: " + request.text());
            Validated<List<WrittenPaper>> both = office.bothPages(request, options(COMPARISON_DAY), LookAhead.USUAL);
            papers.add(both.map(List::getFirst));
            papers.add(both.map(List::getLast));
        }
        progress.accept("Fit of records: " + RECORDS);
        FitOffice fits = Office.of(book).fits();
        papers.add(DemoForms.inFiles(files -> fits.table(files.resolve(RECORDS), options(COMPARISON_DAY)))
                .then(fit -> fits.write(fit, options(COMPARISON_DAY))).map(fit -> fit.paper().orElseThrow()));
        for (FormName agreement : entries.agreements()) {
            progress.accept("Agreement, renewal: " + agreement.text());
            papers.add(office.agreement(agreement, options(AGREEMENT_DAY)));
            LocalDate day = Objects.requireNonNull(NOTICE_DAYS.get(agreement.text()));
            papers.add(office.renewal(agreement, options(day), Optional.empty()).map(RenewalAdvice::paper));
        }
        return papers;
    }

    private static PaperOptions options(LocalDate day) {
        return new PaperOptions(Optional.empty(), day, Optional.empty(), Extras.NONE);
    }
}
