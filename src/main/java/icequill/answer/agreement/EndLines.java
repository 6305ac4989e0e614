package icequill.answer.agreement;

import icequill.answer.BookedPaper;
import icequill.answer.agreement.AgreementEnding.Back;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the end of an agreement leaves for the one whose it was, in words. */
record EndLines(Sentences sentences, boolean isTrial) {

    List<String> of(Optional<Back> paid, List<BookedPaper> credits, List<Integer> unbilled) {
        List<String> lines = new ArrayList<>();
        paid.ifPresentOrElse(back -> {
            lines.add(sentences.word("agreed.back", sentences.formats().amount(back.amount()), back.how()));
            lines.addAll(back.why());
        }, () -> lines.add(sentences.word("agreed.nothing-ahead")));
        credits.forEach(credit -> lines.add(isTrial ? credit.description() : credit.title()));
        if (!unbilled.isEmpty()) {
            lines.add(sentences.word("agreed.unbilled", numbers(unbilled)));
        }
        return lines;
    }

    static String numbers(List<Integer> payments) {
        return payments.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
