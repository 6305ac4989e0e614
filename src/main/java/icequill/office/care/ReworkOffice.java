package icequill.office.care;

import icequill.answer.BookedPaper;
import icequill.answer.rates.Rework;
import icequill.document.CombinedInvoice;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import icequill.files.paper.PaperJson;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.PastEntries;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.office.billing.StandingInvoices;
import icequill.office.writing.PaperNumbers;
import icequill.office.writing.RepairQuoting;
import icequill.papers.CombinedInvoiceAssembly;
import icequill.papers.InstallmentAssembly;
import icequill.papers.InvoiceAssembly;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.AgreementLoader;
import icequill.shop.BookedPapers;
import icequill.shop.FormName;
import icequill.shop.PastForms;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import icequill.visits.PrepaidVisits;
import icequill.visits.RouteVisits;
import icequill.visits.VisitContext;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The office that works issued papers out again: by the version of the rates that they name, from what the trail says that the book held
 * when they were issued.
 */
public final class ReworkOffice {

    private final ShopBook book;

    private ReworkOffice(ShopBook book) {
        this.book = book;
    }

    public static ReworkOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static ReworkOffice of(ShopBook book) {
        return new ReworkOffice(book);
    }

    /** A paper as it was issued. */
    private record Kept(IssuedPaper issued, Paper paper) {

        String number() {
            return issued.number();
        }

        /** As its request asked for it. */
        PaperOptions options() {
            return new PaperOptions(Optional.of(number()), paper.date(), Optional.of(paper.language()), Extras.NONE);
        }

        Rework against(Paper again) {
            return Rework.of(number(), issued.ratesVersion(), PaperJson.compact(paper), PaperJson.compact(again));
        }
    }

    /** Holds what a paper would be now that is worked out from all that it was worked out from then, against what was issued. */
    public Validated<Rework> rework(String number) {
        return book.read(open -> PaperNumbers.find(open, number).then(issued -> unlessForgotten(open, issued))
                .then(issued -> BookedPapers.paper(open, issued).map(paper -> new Kept(issued, paper))))
                .then(kept -> book.by(kept.issued().ratesVersion()).then(found -> found
                        .map(then -> book.read(open -> again(open, then, kept)))
                        .orElseGet(() -> missing(kept, "the rates by which it was made are not in the book",
                                "a paper that was issued since the book keeps them"))));
    }

    private static Validated<IssuedPaper> unlessForgotten(Reading open, IssuedPaper issued) {
        return issued.origin().customer().flatMap(id -> open.entries().customer(id).found())
                .flatMap(CustomerEntry::forgotten)
                .map(day -> Validated.<IssuedPaper>invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the customer of " + issued.number() + " was forgotten on " + day
                                + ", and with him what it was worked out from",
                        "a paper of another customer")))
                .orElseGet(() -> Validated.valid(issued));
    }

    private static Validated<Rework> missing(Kept kept, String what, String allowed) {
        return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, kept.number() + ": " + what, allowed));
    }

    private static Validated<Rework> again(Reading open, ShopBook then, Kept kept) {
        Optional<PastEntries> past = open.past(kept.number());
        if (past.isEmpty()) {
            return missing(kept, "the trail does not know of it", "what icequill audit says of it");
        }
        PastForms forms = new PastForms(past.get(), open, kept.issued().issuedAt());
        ShopFolder shop = forms.shop(then);
        return switch (kept.paper()) {
        case Invoice invoice -> new VisitLoader(shop).of(new FormName.InBook(kept.issued().origin().visit().orElse("")))
                .then(hand -> InvoiceAssembly.of(hand, invoice.advanced().map(Invoice.Advanced::bills)
                        .orElse(List.of()), kept.options()))
                .map(again -> kept.against(addressed(again, invoice, kept.issued())));
        case CombinedInvoice invoice -> together(shop, kept)
                .map(again -> kept.against(addressed(again, invoice, kept.issued())));
        case InstallmentInvoice invoice -> payment(open, shop, kept, invoice);
        case RepairQuote quote -> nearest(kept, forms, name -> RepairQuoting
                .of(then.folder(), forms.shop(then), name, kept.options())
                .then(quoting -> quoting.quote(kept.options())));
        case MaintenanceQuote quote -> nearest(kept, forms, name -> new PlanLoader(forms.shop(then))
                .of(name, quote.date())
                .then(hand -> hand.setting().site().billTo(quote.date())
                        .then(billTo -> hand.quote(kept.options(), billTo))));
        case StageInvoice invoice -> Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                kept.number() + " asks for a part of " + invoice.quote().number() + ", at the amounts of that quote",
                "the number of that quote"));
        default -> Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                kept.number() + " is a " + BookedPaper.words(kept.issued().series().kind())
                        + ", whose amounts are those of the invoice that it corrects",
                "the number of that invoice"));
        };
    }

    /** An invoice in the place of another has that one's prices, and an addressee or order of its own. */
    private static Invoice addressed(Invoice again, Invoice issued, IssuedPaper row) {
        return row.origin().replaces().isEmpty()
                ? again
                : new Invoice(issued.number(), issued.date(), issued.due(), issued.shop(), issued.language(),
                        issued.size(), issued.billTo(), issued.vendorNumber(), issued.attended(), issued.machines(),
                        again.lines(), again.totals(), issued.remarks(), again.advanced());
    }

    private static Validated<CombinedInvoice> together(ShopFolder shop, Kept kept) {
        Origin origin = kept.issued().origin();
        Problems problems = new Problems();
        List<VisitContext> visits = Stream
                .concat(origin.visit().stream(), origin.further().stream().map(Origin.At::visit))
                .flatMap(id -> problems.take(new VisitLoader(shop).of(new FormName.InBook(id))).stream()).toList();
        return problems.or(() -> visits).then(valid -> new RouteVisits(valid).shared())
                .then(valid -> new PrepaidVisits(valid).drawn())
                .then(valid -> CombinedInvoiceAssembly.of(valid, kept.options()));
    }

    private static CombinedInvoice addressed(CombinedInvoice again, CombinedInvoice issued, IssuedPaper row) {
        return row.origin().replaces().isEmpty()
                ? again
                : new CombinedInvoice(issued.number(), issued.date(), issued.due(), issued.shop(), issued.language(),
                        issued.size(), issued.billTo(), issued.vendorNumber(),
                        IntStream.range(0, again.parts().size()).mapToObj(i -> new CombinedInvoice.Part(
                                issued.parts().get(i).attended(), issued.parts().get(i).machines(),
                                again.parts().get(i).lines())).toList(),
                        again.totals(), issued.remarks());
    }

    private static Validated<Rework> payment(Reading open, ShopFolder shop, Kept kept, InstallmentInvoice invoice) {
        LocalDate day = invoice.date();
        return new AgreementLoader(shop, (agreement, site) -> Validated.valid(StandingInvoices.netsBefore(open,
                agreement, site, kept.issued().issuedAt()))).of(new FormName.InBook(invoice.agreement()), day)
                .then(hand -> hand.billTo(day)
                        .then(billTo -> new InstallmentAssembly(hand, billTo).invoice(invoice.payment(),
                                kept.options())))
                .map(again -> kept.against(addressed(again, invoice, kept.issued())));
    }

    private static InstallmentInvoice addressed(InstallmentInvoice again, InstallmentInvoice issued, IssuedPaper row) {
        return row.origin().replaces().isEmpty()
                ? again
                : new InstallmentInvoice(issued.number(), issued.date(), issued.due(), issued.shop(),
                        issued.language(), issued.size(), issued.billTo(), issued.vendorNumber(), issued.agreement(),
                        issued.plan(), issued.payment(), issued.payments(), issued.served(), issued.sites(),
                        again.lines(), again.totals(), issued.remarks());
    }

    /** Makes the paper of a request. */
    @FunctionalInterface
    private interface Quoting {
        Validated<? extends Paper> of(FormName name);
    }

    /** A quote does not say which request it answers: the one at its site that comes nearest. */
    private static Validated<Rework> nearest(Kept kept, PastForms forms, Quoting quoting) {
        List<Rework> all = new ArrayList<>();
        forms.quotable(kept.issued().origin().site().orElse("")).forEach(form -> quoting
                .of(new FormName.InBook(form.id())).found().ifPresent(again -> all.add(kept.against(again))));
        return all.stream().min(Comparator.comparingInt(rework -> rework.differences().size())).map(Validated::valid)
                .orElseGet(() -> missing(kept, "what was to be quoted is not in the book",
                        "a quote whose request was imported; this one's stood in a file"));
    }
}
