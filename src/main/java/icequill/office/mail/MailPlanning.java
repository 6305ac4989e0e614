package icequill.office.mail;

import icequill.answer.mail.MailEntry;
import icequill.answer.mail.MailPlan;
import icequill.answer.mail.MailPlan.LeftOut;
import icequill.answer.mail.MailPlan.Planned;
import icequill.answer.mail.MailSheet;
import icequill.answer.mail.MailTelling;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.life.mail.MailMatter.Occasion;
import icequill.office.letters.Repeat;
import icequill.office.writing.PaperNumbers;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.life.MailLife;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks at what mails would be written about papers; nothing is.
 *
 * @param isAgain papers too whose mail went out before, where they are named
 */
public record MailPlanning(ShopBook book, MailScope scope, Occasion occasion, boolean isAgain) {

    public Validated<MailPlan> plan() {
        return book.together(held -> scope.all(held).then(numbers -> held.read(open -> {
            Problems problems = new Problems();
            List<Planned> mails = new ArrayList<>();
            List<LeftOut> leftOut = new ArrayList<>();
            MailOffice office = MailOffice.of(held);
            numbers.forEach(number -> problems.take(PaperNumbers.find(open, number).then(
                    issued -> planned(open, office, issued, leftOut))).flatMap(found -> found).ifPresent(mails::add));
            return problems.or(() -> new MailPlan(mails, leftOut));
        })));
    }

    private Validated<Optional<Planned>> planned(Reading open, MailOffice office, IssuedPaper issued,
            List<LeftOut> leftOut) {
        List<MailLife> before = MailLife.about(open, issued.number());
        if (scope.leavesOut(before) || Repeat.of(before, book.clock().instant(), isAgain).isPresent()) {
            MailEntry last = MailTelling.of(book).entry(open, before.getLast());
            leftOut.add(new LeftOut(issued.number(), issued.date(), last.customerName(), Optional.of(last), List.of()));
            return Validated.valid(Optional.empty());
        }
        Validated<MailSheet> sheet = office.proposal(open, issued, before, occasion);
        List<Problem> problems = sheet.found().map(MailSheet::problems).orElse(sheet.problems());
        if (!problems.isEmpty()) {
            leftOut.add(new LeftOut(issued.number(), issued.date(),
                    sheet.found().map(found -> found.mail().customerName()).orElse(""), Optional.empty(), problems));
        }
        return Validated.valid(sheet.found().flatMap(found -> found.copy().map(copy -> new Planned(issued.number(),
                issued.date(), found.mail().customer(), found.mail().customerName(), copy))));
    }
}
