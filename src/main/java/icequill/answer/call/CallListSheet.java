package icequill.answer.call;

import icequill.answer.call.CallListing.Responses;
import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.stream.Stream;

/** A list of calls, for the screen in one language and as data. */
public record CallListSheet(CallListing data, Sentences sentences) implements Sheet {

    /** The heads of {@link #rows}. */
    public List<String> head() {
        return Stream.of("called.day", "called.call", "list.site", "list.state", "list.caller", "called.planned-for",
                "called.response").map(sentences::word).toList();
    }

    public List<List<String>> rows() {
        return data.calls().stream().map(row -> List.of(row.at().toLocalDate().toString(),
                row.call().or(row::visit).orElse(""), row.site(),
                sentences.word("call-stage." + ConstantKey.of(row.stage())), row.caller(),
                row.plan().map(plan -> plan.person() + " " + plan.at().toLocalDate()).orElse(""),
                sentences.word("call-kept." + ConstantKey.of(row.response().kept())))).toList();
    }

    /** How the promises were kept in all. */
    public String responses() {
        Responses all = data.responses();
        return sentences.word("called.responses", String.valueOf(all.kept()), String.valueOf(all.missed()),
                String.valueOf(all.waiting()), String.valueOf(all.notPromised()));
    }

    public String none() {
        return sentences.word("called.none");
    }

    /** What is said where there are older ones. */
    public String more(int wanted) {
        return sentences.word("list.more", String.valueOf(wanted));
    }
}
