package icequill.answer.agreement;

import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What ending an agreement comes to, for the screen in one language and as data. */
public record EndingSheet(AgreementEnding data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word(data.tried() ? "agreed.would-end" : "agreed.ended", data.agreement(),
                sentences.formats().day(data.lastDay())));
        data.back().ifPresentOrElse(back -> {
            lines.add(sentences.word("agreed.back", sentences.formats().amount(back.amount()), back.how()));
            lines.addAll(back.why());
        }, () -> lines.add(sentences.word("agreed.nothing-ahead")));
        data.credits().forEach(credit -> lines.add(data.tried() ? credit.description() : credit.title()));
        if (!data.unbilled().isEmpty()) {
            lines.add(sentences.word("agreed.unbilled", numbers(data.unbilled())));
        }
        if (!data.dropped().isEmpty()) {
            lines.add(sentences.word("agreed.dropped", numbers(data.dropped())));
        }
        return lines;
    }

    private static String numbers(List<Integer> payments) {
        return payments.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
