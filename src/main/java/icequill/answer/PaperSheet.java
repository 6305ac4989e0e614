package icequill.answer;

import icequill.document.Paper;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.problem.Checked;
import icequill.shop.BookedPapers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that the book knows of a paper.
 *
 * @param details names and values, in order
 * @param credits that give it back, in whole or in part
 * @param amounts every amount of it, by name
 * @param paid what became of it in money; empty for what asks for none
 */
public record PaperSheet(BookedPaper paper, Map<String, String> details, List<BookedPaper> credits,
        Map<String, Object> amounts, Optional<PaidSheet> paid) {

    public PaperSheet {
        details = new LinkedHashMap<>(details);
        credits = List.copyOf(credits);
        amounts = new LinkedHashMap<>(amounts);
    }

    public static PaperSheet of(Reading open, IssuedPaper paper) {
        Map<String, String> details = new LinkedHashMap<>();
        paper.origin().customer().ifPresent(id -> details.put("customer", id));
        paper.origin().site().ifPresent(id -> details.put("site", id));
        paper.origin().visit().ifPresent(id -> details.put("visit", id));
        paper.origin().agreement().ifPresent(id -> details.put("agreement", id));
        open.papers().backdated(paper.number()).ifPresent(reason -> details.put("backdated", reason));
        replacedBy(open, paper).findFirst().ifPresent(number -> details.put("replacedBy", number));
        details.put("issuedAt", paper.issuedAt().toString());
        details.put("ratesVersion", paper.ratesVersion());
        details.put("sha256", paper.pdfHash());
        details.put("seal", paper.seal());
        return new PaperSheet(BookedPaper.of(paper, open), details, open.papers().creditsOf(paper.number()).stream()
                .map(credit -> BookedPaper.of(credit, open)).toList(), amounts(open, paper), PaidSheet.of(open, paper));
    }

    /** None where the paper's data cannot be read, which an audit tells. */
    private static Map<String, Object> amounts(Reading open, IssuedPaper paper) {
        return switch (BookedPapers.paper(open, paper)) {
        case Checked.Sound<Paper> sound -> PaperAmounts.of(sound.value());
        case Checked.Faulty<Paper> faulty -> Map.of();
        };
    }

    private static Stream<String> replacedBy(Reading open, IssuedPaper paper) {
        return Stream.concat(paper.origin().visit().stream().flatMap(id -> open.papers().ofVisit(id).stream()),
                paper.origin().agreement().stream().flatMap(id -> open.papers().ofAgreement(id).stream()))
                .filter(other -> other.origin().replaces().filter(paper.number()::equals).isPresent())
                .map(IssuedPaper::number);
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        paper.json().forEach((name, value) -> rows.add(List.of(name, String.valueOf(value))));
        details.forEach((name, value) -> rows.add(List.of(name, value)));
        credits.forEach(credit -> rows.add(List.of("givenBackBy", credit.title())));
        paid.ifPresent(money -> rows.addAll(money.rows()));
        return rows;
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(paper.json());
        view.putAll(details);
        view.put("amounts", amounts);
        paid.ifPresent(money -> view.putAll(money.json()));
        view.put("credits", credits.stream().map(BookedPaper::json).toList());
        return view;
    }
}
