package icequill.office.asking;

import icequill.office.asking.Turn.Ask;
import icequill.office.asking.Turn.Wrong;
import icequill.problem.Problem;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** How questions of any kind are asked and their answers read, in one language. */
record Asking(Sentences sentences) {

    private static final String KEYS = "ask.";
    /** For nothing, where an empty answer would take what is proposed. */
    private static final String NOTHING = "-";
    private static final int LONGEST_TEXT = 200;
    private static final int LONGEST_NOTE = 2000;

    /** The question under a key of the words, with details in its places. */
    Question question(String key, String... details) {
        return new Question(sentences.word(KEYS + key, details), List.of(), Optional.empty(),
                sentences.word(KEYS + key + ".help", details));
    }

    Wrong wrong(String key, String... details) {
        return new Wrong(sentences.word(KEYS + "wrong." + key, details));
    }

    Wrong wrong(Problem problem) {
        return wrong("found", problem.message(), problem.allowed());
    }

    /** One that has to be answered. */
    Ask needed(Question question, Function<String, Turn> then) {
        return new Ask(question, answer -> {
            String taken = answer.isEmpty() ? question.proposal().orElse("") : answer;
            return taken.isEmpty() ? wrong("needed") : then.apply(taken);
        });
    }

    /** One that may be left out. */
    Ask skippable(Question question, Function<Optional<String>, Turn> then) {
        return new Ask(question, answer -> {
            String taken = answer.isEmpty() ? question.proposal().orElse("") : answer;
            return then.apply(Optional.of(taken).filter(text -> !text.isEmpty() && !text.equals(NOTHING)));
        });
    }

    /** A short text, such as a name, that has to be given. */
    Ask text(Question question, Function<String, Turn> then) {
        return needed(question, text -> limited(text, LONGEST_TEXT, then));
    }

    /** A short text that may be left out. */
    Ask textOrNone(Question question, Function<Optional<String>, Turn> then) {
        return textOrNone(question, LONGEST_TEXT, then);
    }

    Ask textOrNone(Question question, int longest, Function<Optional<String>, Turn> then) {
        return skippable(question, orNone(longest, then));
    }

    /** Sentences that have to be given. */
    Ask note(Question question, Function<String, Turn> then) {
        return needed(question, text -> limited(text, LONGEST_NOTE, then));
    }

    /** Sentences that may be left out. */
    Ask noteOrNone(Question question, Function<Optional<String>, Turn> then) {
        return skippable(question, orNone(LONGEST_NOTE, then));
    }

    private Function<Optional<String>, Turn> orNone(int longest, Function<Optional<String>, Turn> then) {
        return given -> given.isEmpty()
                ? then.apply(given)
                : limited(given.get(), longest, text -> then.apply(Optional.of(text)));
    }

    private Turn limited(String text, int longest, Function<String, Turn> then) {
        return text.length() > longest
                ? wrong("long", String.valueOf(text.length()), String.valueOf(longest))
                : then.apply(text);
    }

    /** One of some choices by its number. */
    Ask oneOf(Question question, List<String> texts, Function<Integer, Turn> then) {
        return needed(question.choosing(Picks.numbered(texts)), answer -> picked(answer, texts, then));
    }

    /** The same, or none. */
    Ask oneOrNone(Question question, List<String> texts, Function<Optional<Integer>, Turn> then) {
        return skippable(question.choosing(Picks.numbered(texts)), answer -> answer.isEmpty()
                ? then.apply(Optional.empty())
                : picked(answer.get(), texts, place -> then.apply(Optional.of(place))));
    }

    private Turn picked(String answer, List<String> texts, Function<Integer, Turn> then) {
        return Picks.number(answer, texts.size()).map(then)
                .orElseGet(() -> wrong("number", answer, String.valueOf(texts.size())));
    }

    /** Several of some choices, or none. */
    Ask someOf(Question question, List<String> marked, BiFunction<String, Integer, Optional<List<Integer>>> reader,
            String wrong, Function<List<Integer>, Turn> then) {
        return skippable(question.choosing(marked), answer -> answer.isEmpty()
                ? then.apply(List.of())
                : reader.apply(answer.get(), marked.size()).map(then)
                        .orElseGet(() -> wrong(wrong, answer.get(), lastMark(marked))));
    }

    private static String lastMark(List<String> marked) {
        return marked.isEmpty() ? NOTHING : marked.getLast().replaceFirst(" .*", "");
    }

    /** How much of something, within what a form takes. */
    Turn quantity(String answer, BigDecimal least, BigDecimal most, Function<BigDecimal, Turn> then) {
        Optional<BigDecimal> number = answer.matches("[0-9]{1,9}([.][0-9]{1,3})?")
                ? Optional.of(new BigDecimal(answer))
                : Optional.empty();
        return number.filter(found -> found.compareTo(least) >= 0 && found.compareTo(most) <= 0).map(then)
                .orElseGet(() -> wrong("quantity", answer, least.toPlainString(), most.toPlainString()));
    }
}
