package icequill.answer.call;

import icequill.explain.ConstantKey;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells how soon somebody was promised, and came. */
record ResponseTelling(Sentences sentences) {

    /** @param agreement by which somebody was promised; empty where it was on the telephone */
    List<String> lines(ToldResponse response, Optional<String> agreement) {
        List<String> lines = new ArrayList<>();
        response.promised().ifPresent(by -> lines.add(sentences.word(
                agreement.isPresent() ? "called.promised-by" : "called.promised",
                sentences.formats().day(by.toLocalDate()), sentences.formats().time(by.toLocalTime()),
                agreement.orElse(""))));
        lines.add(sentences.word("called.response-is", response.minutes().map(sentences::duration)
                .orElseGet(() -> sentences.word("called.nobody-yet")),
                sentences.word("call-kept." + ConstantKey.of(response.kept()))));
        return lines;
    }
}
