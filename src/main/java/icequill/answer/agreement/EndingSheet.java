package icequill.answer.agreement;

import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;

/** What ending an agreement comes to, for the screen in one language and as data. */
public record EndingSheet(AgreementEnding data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word(data.tried() ? "agreed.would-end" : "agreed.ended", data.agreement(),
                sentences.formats().day(data.lastDay())));
        lines.addAll(new EndLines(sentences, data.tried()).of(data.back(), data.credits(), data.unbilled()));
        if (!data.dropped().isEmpty()) {
            lines.add(sentences.word("agreed.dropped", EndLines.numbers(data.dropped())));
        }
        return lines;
    }
}
