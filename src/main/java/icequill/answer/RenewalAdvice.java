package icequill.answer;

import icequill.agreement.NoticePlan;
import icequill.agreement.NoticeRule;
import icequill.agreement.NoticeWindow;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.files.answer.Sheet;
import icequill.party.Language;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A renewal notice that was written, and when and how to give it by the laws on record. A proposal, for the office alone.
 *
 * @param day of the notice
 * @param country ISO 3166-1 alpha-2 of the shop, by which days are written
 */
public record RenewalAdvice(WrittenPaper paper, NoticePlan plan, LocalDate day, Language language, String country)
        implements Sheet {

    /** What the office should know, sentence by sentence. */
    public List<String> sentences() {
        Sentences sentences = Sentences.of(language, country);
        List<String> all = new ArrayList<>();
        plan.window().ifPresent(window -> all.add(sentences.say(when(window))));
        listed(sentences, "renewal.delivery", ways().stream().map(NoticeRule.Delivery::word)).ifPresent(all::add);
        listed(sentences, "renewal.contents", plan.rules().stream().flatMap(rule -> rule.contents().stream()).distinct()
                .map(NoticeRule.Content::word)).ifPresent(all::add);
        plan.rules().forEach(rule -> all.add(sentences.say(rule.missed())));
        plan.remarks().forEach(remark -> all.add(sentences.say(remark)));
        return all;
    }

    private static Optional<String> listed(Sentences sentences, String key, Stream<Fact> words) {
        String list = words.map(word -> sentences.say(Phrase.of("renewal.law", word)))
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? Optional.empty() : Optional.of(sentences.word(key).replace("{0}", list));
    }

    private Phrase when(NoticeWindow window) {
        Fact first = new Fact.Day(window.first());
        Fact last = new Fact.Day(window.last());
        return plan.send().map(send -> Phrase.of("renewal.send", new Fact.Day(send), first, last))
                .orElseGet(() -> Phrase.of(day.isAfter(window.last()) ? "renewal.window-over" : "renewal.window",
                        first, last));
    }

    /** Those that every law allows. */
    private Set<NoticeRule.Delivery> ways() {
        Set<NoticeRule.Delivery> ways = new LinkedHashSet<>();
        plan.rules().stream().findFirst().ifPresent(first -> ways.addAll(first.delivery()));
        plan.rules().forEach(rule -> ways.retainAll(rule.delivery()));
        return ways;
    }

    /**
     * What JSON shows of it.
     *
     * @param window days on which the notice may be given; missing where no law or agreement sets any
     * @param send the day on which it is best sent
     * @param rules of the laws on record, by id
     * @param advice sentence by sentence
     */
    public record Data(WrittenPaper paper, Optional<Window> window, Optional<LocalDate> send, List<String> rules,
            List<String> advice) {}

    /** From the first to the last day. */
    public record Window(LocalDate first, LocalDate last) {}

    @Override
    public Data data() {
        return new Data(paper, plan.window().map(window -> new Window(window.first(), window.last())), plan.send(),
                plan.rules().stream().map(NoticeRule::id).toList(), sentences());
    }
}
