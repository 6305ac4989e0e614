package icequill.office;

import icequill.agreement.NoticeRules;
import icequill.document.FitSheet;
import icequill.document.InstallmentInvoice;
import icequill.document.Paper;
import icequill.files.ShopFolder;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.ForecastRates;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The office where plans and agreements are looked after. Each call reads the shop folder anew, so that it always works with
 * what stands there now.
 */
public final class PlanOffice {

    private final Path folder;
    private final PaperDesk desk;

    private PlanOffice(Path folder) {
        this.folder = folder;
        this.desk = new PaperDesk(folder);
    }

    static PlanOffice of(Path folder) {
        return new PlanOffice(folder);
    }

    /** Writes a maintenance quote into papers/, at the prices of its own date, which it holds. */
    Checked<WrittenPaper> quote(Path file, Office.Wish wish) {
        return Office.numbered(folder, wish).then(sound -> PlanInHand.of(BookSites.shop(folder), file, wish.date()))
                .then(hand -> Office.billTo(hand.setting().site(), wish.date())
                        .then(billTo -> hand.quote(wish, billTo))
                        .then(quote -> write(quote, wish.number().map(number -> "quote-" + number)
                                .orElse("draft-quote-" + nameOf(file)), hand.setting().site(), wish,
                                wish.number().isEmpty()))
                        .map(paper -> paper.with(hand.leftOut())));
    }

    /** What the plans of a maintenance quote cost the shop and earn, for the owner. */
    public Checked<PlanEarnings> earnings(Path file, Office.Wish wish) {
        return PlanInHand.of(BookSites.shop(folder), file, wish.date())
                .map(hand -> new PlanEarnings(hand, hand.language(wish.language())));
    }

    /** Writes an agreement into papers/, in place of an earlier print. */
    public Checked<WrittenPaper> agreement(Path file, Office.Wish wish) {
        ShopFolder shop = BookSites.shop(folder);
        return Office.unnumbered(wish)
                .then(sound -> AgreementInHand.of(shop, file, wish.date(), InvoicedPayments.in(folder)))
                .then(hand -> Office.billTo(hand.setting().whole(), wish.date())
                        .then(billTo -> new AgreementAssembly(hand, billTo, shop.earning()).agreement(wish))
                        .then(paper -> write(paper, "agreement-" + paper.number(), hand.setting().whole(), wish,
                                true)));
    }

    /**
     * Writes the invoice of one payment of an agreement into papers/. A draft replaces an earlier draft; a numbered invoice never
     * replaces anything.
     *
     * @param payment from 1
     */
    public Checked<WrittenPaper> payment(Path file, int payment, Office.Wish wish) {
        return Office.numbered(folder, wish)
                .then(sound -> AgreementInHand.of(BookSites.shop(folder), file, wish.date(),
                        InvoicedPayments.in(folder)))
                .then(hand -> Office.billTo(hand.setting().whole(), wish.date())
                        .then(billTo -> new InstallmentAssembly(hand, billTo).invoice(payment, wish))
                        .then(invoice -> write(invoice, wish)));
    }

    private Checked<WrittenPaper> write(InstallmentInvoice invoice, Office.Wish wish) {
        String name = wish.number().map(number -> "invoice-" + number)
                .orElse("draft-" + invoice.agreement() + "-" + invoice.payment());
        return desk.write(invoice, name, wish.extras(), invoice.isDraft())
                .map(files -> WrittenPaper.of(files, invoice, List.of()));
    }

    /**
     * Writes the notice of an agreement's renewal into papers/, in place of an earlier one.
     *
     * @param late why it does not come in time, printed for the customer; empty where it does
     */
    public Checked<RenewalAdvice> renewal(Path file, Office.Wish wish, Optional<String> late) {
        ShopFolder shop = BookSites.shop(folder);
        return Office.unnumbered(wish)
                .then(sound -> AgreementInHand.of(shop, file, wish.date(), InvoicedPayments.in(folder)))
                .then(hand -> Office.billTo(hand.setting().whole(), wish.date())
                        .then(billTo -> renewal(new RenewalAssembly(shop, hand, billTo), wish, late)));
    }

    private Checked<RenewalAdvice> renewal(RenewalAssembly assembly, Office.Wish wish, Optional<String> late) {
        NoticeRules rules = assembly.folder().notices().orElseThrow();
        return assembly.notice(wish, late)
                .then(notice -> write(notice, "renewal-" + notice.agreement(), assembly.hand().setting().whole(), wish,
                        true))
                .map(paper -> new RenewalAdvice(paper, assembly.plan(rules), assembly.hand().language(wish.language()),
                        assembly.hand().setting().shop().address().country()));
    }

    /** Writes a comparison of ways of having machines looked after into papers/, in place of an earlier one. */
    public Checked<Compared> compare(Path file, Office.Wish wish, LookAhead asked) {
        ShopFolder shop = BookSites.shop(folder);
        return Office.unnumbered(wish).then(sound -> PlanInHand.of(shop, file, wish.date()))
                .then(hand -> forecast(shop, hand, wish, asked)
                        .then(forecast -> new ComparisonAssembly(hand, forecast).sheet(wish)
                                .then(sheet -> write(sheet, "comparison-" + nameOf(file), hand.setting().site(), wish,
                                        true).map(paper -> new Compared(paper, sheet, forecast)))));
    }

    /** Writes the owner's page of a comparison into papers/, in place of an earlier one; for her eyes only. */
    public Checked<WrittenPaper> ownersOutlook(Path file, Office.Wish wish, LookAhead asked) {
        ShopFolder shop = BookSites.shop(folder);
        return Office.unnumbered(wish).then(sound -> PlanInHand.of(shop, file, wish.date()))
                .then(hand -> forecast(shop, hand, wish, asked)
                        .then(found -> found.map(Checked::sound).orElseGet(() -> Checked.faulty(noRates(wish)))))
                .then(forecast -> write(new OwnersAssembly(forecast).page(wish), "owner-comparison-" + nameOf(file),
                        forecast.hand().setting().site(), wish, true));
    }

    /** Fits how soon dirt stops machines to a table of the shop's own records, and writes a sheet of it into papers/. */
    public Checked<FitResult> fit(Path file, Office.Wish wish) {
        ShopFolder shop = BookSites.shop(folder);
        Problems problems = new Problems();
        problems.addAll(shop.problems());
        return problems.or(() -> shop.shop().orElseThrow())
                .then(found -> FitAssembly.of(found, shop.forecast(wish.date()), file))
                .then(assembly -> assembly.fits().then(fits -> {
                    FitSheet sheet = assembly.sheet(wish, fits);
                    String name = "fit-" + file.getFileName().toString().replaceFirst("[.][A-Za-z]+$", "");
                    return desk.write(sheet, name, wish.extras(), true)
                            .map(files -> new FitResult(WrittenPaper.of(files, sheet, sheet.table(), List.of()),
                                    sheet, fits));
                }));
    }

    private static Problem noRates(Office.Wish wish) {
        return new Problem(Code.NO_RATES, Place.ofFile("pricing"), "no forecast rates cover " + wish.date(),
                "a file of kind forecast");
    }

    /** Empty where the shop has nothing to forecast by; then nothing can be asked of a forecast either. */
    private static Checked<Optional<SiteForecast>> forecast(ShopFolder shop, PlanInHand hand, Office.Wish wish,
            LookAhead asked) {
        Optional<ForecastRates> rates = shop.forecast(wish.date());
        if (rates.isEmpty()) {
            return asked.equals(LookAhead.USUAL)
                    ? Checked.sound(Optional.empty())
                    : Checked.faulty(noRates(wish));
        }
        return asked.checked()
                .then(sound -> SiteForecast.of(hand, rates.get(), shop.energy(), wish.date(), sound))
                .map(Optional::of);
    }

    private Checked<WrittenPaper> write(Paper paper, String name, Site site, Office.Wish wish, boolean replace) {
        return desk.write(paper, name, wish.extras(), replace).map(files -> WrittenPaper.of(files, paper,
                site.customer().name(), List.of()));
    }

    private static String nameOf(Path file) {
        return file.getFileName().toString().replaceFirst("[.]yaml$", "");
    }
}
