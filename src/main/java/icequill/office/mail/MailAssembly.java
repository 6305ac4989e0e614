package icequill.office.mail;

import icequill.document.Bill;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.ServicePeriod;
import icequill.files.form.MailSettings;
import icequill.files.form.MailSettings.Standing;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.life.mail.MailMatter.Loose;
import icequill.life.mail.MailMatter.Numbered;
import icequill.mail.Enclosure;
import icequill.mail.MailAddress;
import icequill.mail.MailParties;
import icequill.office.letters.LooseAssembly;
import icequill.office.letters.MailText;
import icequill.office.letters.Recipients;
import icequill.office.letters.Sender;
import icequill.office.letters.WrittenMail;
import icequill.office.letters.WrittenMail.Along;
import icequill.office.writing.MailDesk;
import icequill.party.BillTo;
import icequill.party.Customer;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookedPapers;
import icequill.shop.ShopBook;
import icequill.shop.life.MailLife;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes mails: to whom, what they say, what goes along.
 *
 * @param now where the shop is
 */
record MailAssembly(ShopBook book, MailSettings settings, ZonedDateTime now) {

    /** What an address on paper stands beside. */
    private record Known(IssuedPaper issued, Paper paper, CustomerEntry entry) {
        Customer customer() {
            return entry.customer();
        }
    }

    /** A mail as it would go out now. */
    Validated<WrittenMail> of(Reading open, MailLife mail) {
        return switch (mail.matter()) {
        case Numbered numbered -> numbered(open, mail, numbered);
        case Loose loose -> new LooseAssembly(book, settings, now).of(open, mail, loose);
        };
    }

    private Validated<WrittenMail> numbered(Reading open, MailLife mail, Numbered matter) {
        return open.papers().show(matter.name()).then(issued -> BookedPapers.paper(open, issued)
                .then(paper -> open.entries().customerNow(mail.customer())
                        .map(entry -> new Known(issued, paper, entry))))
                .then(known -> MailText.of(known.paper(), matter.occasion())
                        .then(letter -> written(mail, known, letter)));
    }

    private Validated<WrittenMail> written(MailLife mail, Known known, MailText letter) {
        PaperKind kind = known.issued().series().kind();
        MailEnclosures enclosures = new MailEnclosures(book, settings, now.toLocalDate());
        Problems problems = new Problems();
        Optional<List<MailAddress>> to = problems.take(Recipients.of(known.entry().id(), known.customer().contacts(),
                MailDesk.purpose(kind), printed(known.paper())));
        Optional<List<Standing>> standing = problems.take(enclosures.standing(kind, known.customer().mail()));
        List<Enclosure> files = new ArrayList<>(problems.take(enclosures.of(mail.matter().name(), kind,
                known.customer().mail(), fileName(known))).orElse(List.of()));
        standing.stream().flatMap(List::stream)
                .forEach(each -> problems.take(enclosures.read(each)).ifPresent(files::add));
        Optional<MailAddress> from = problems.take(Sender.of(settings, known.paper().shop()));
        return problems.or(() -> new MailParties(from.orElseThrow(), Optional.empty(), to.orElseThrow()))
                .then(parties -> WrittenMail.of(mail, letter, parties,
                        new Along(files, standing.orElseThrow().stream().map(Standing::title).toList(),
                                known.paper() instanceof Bill),
                        now));
    }

    private static Optional<String> printed(Paper paper) {
        return (paper instanceof PricedPaper priced
                ? Optional.of(priced.billTo())
                : paper instanceof MaintenanceQuote quote ? Optional.of(quote.billTo()) : Optional.<BillTo>empty())
                .flatMap(BillTo::email);
    }

    /** The number, and what the customer's office files it by. */
    private static String fileName(Known known) {
        Stream<String> filed = known.paper() instanceof PricedPaper priced ? filed(priced.served()) : Stream.empty();
        return Stream.concat(Stream.of(known.issued().number()), filed)
                .map(part -> part.replaceAll("[^A-Za-z0-9.-]+", "-").replaceAll("^[-.]+|[-.]+$", ""))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining("_"));
    }

    private static Stream<String> filed(ServicePeriod served) {
        return Stream.concat(served.purchaseOrder().stream(),
                served.isAtOneSite() ? served.storeNumber().stream() : Stream.empty());
    }
}
