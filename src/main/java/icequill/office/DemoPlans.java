package icequill.office;

import icequill.files.ShopFolder;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * The papers of the invented shop's plans: comparisons, agreements, two payments of each, renewal notices.
 *
 * @param number of the first invoice
 * @param progress is told what comes next
 */
record DemoPlans(Path folder, int number, Consumer<String> progress) {

    private static final LocalDate COMPARISON_DAY = LocalDate.of(2026, 5, 14);
    private static final String RECORDS = "records/runs.csv";
    private static final int PAYMENTS = 2;
    private static final LocalDate AGREEMENT_DAY = LocalDate.of(2026, 5, 20);
    private static final LocalDate NOTICE_DAY = LocalDate.of(2027, 3, 10);

    List<Checked<WrittenPaper>> papers() {
        PlanOffice office = PlanOffice.of(folder);
        ShopFolder shop = BookSites.shop(folder);
        List<Checked<WrittenPaper>> papers = new ArrayList<>();
        for (Path request : shop.quotes().stream().filter(shop::isMaintenance).toList()) {
            progress.accept("Comparison: " + request.getFileName());
            papers.add(office.compare(request, wish(COMPARISON_DAY), LookAhead.USUAL).map(Compared::paper));
            papers.add(office.ownersOutlook(request, wish(COMPARISON_DAY), LookAhead.USUAL));
        }
        progress.accept("Fit of records: " + RECORDS);
        papers.add(office.fit(folder.resolve(RECORDS), wish(COMPARISON_DAY)).map(FitResult::paper));
        int next = number;
        for (Path agreement : shop.agreements()) {
            progress.accept("Agreement, invoices, renewal: " + agreement.getFileName());
            papers.add(office.agreement(agreement, wish(AGREEMENT_DAY)));
            papers.addAll(payments(office, agreement, next));
            next += PAYMENTS;
            papers.add(office.renewal(agreement, wish(NOTICE_DAY)).map(RenewalAdvice::paper));
        }
        return papers;
    }

    /** The first payments of an agreement, each billed on the day it falls due. */
    private List<Checked<WrittenPaper>> payments(PlanOffice office, Path agreement, int first) {
        Checked<AgreementInHand> hand = AgreementInHand.of(BookSites.shop(folder), agreement, AGREEMENT_DAY);
        return IntStream.range(0, PAYMENTS)
                .mapToObj(i -> hand.map(found -> found.payments().get(i).due())
                        .then(due -> office.payment(agreement, i + 1, new Office.Wish(
                                Optional.of("2026-0" + (first + i)), due, Optional.empty(), Extras.NONE))))
                .toList();
    }

    private static Office.Wish wish(LocalDate day) {
        return new Office.Wish(Optional.empty(), day, Optional.empty(), Extras.NONE);
    }
}
