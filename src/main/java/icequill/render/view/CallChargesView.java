package icequill.render.view;

import icequill.agreement.Tier;
import icequill.document.CallCharge;
import icequill.party.Wording;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What calls cost in every labor band, and how soon somebody comes, as texts for {@code parts/plan.ftlh}. */
record CallChargesView(List<CallCharge> calls, Sentences sentences) {

    /**
     * The table.
     *
     * @param plans whose response times are named beside the prices
     * @param grades heads of the prices of an hour
     * @param minimums sentences below
     */
    record Calls(List<String> plans, List<String> grades, List<Band> bands, List<String> minimums)
            implements
            Texts {}

    /**
     * One band.
     *
     * @param hours the price of each grade's hour
     * @param least what a call costs at least
     * @param response of each plan; may be empty
     */
    record Band(String name, String serviceCall, List<String> hours, String least, List<String> response)
            implements
            Texts {}

    /** @param tiers whose response times are named beside the prices */
    Calls calls(List<Tier> tiers) {
        return new Calls(tiers.stream().map(tier -> in(tier.name())).toList(),
                grades().stream().map(grade -> sentences.word("calls.hour", in(grade))).toList(),
                calls.stream().map(call -> band(call, tiers)).toList(),
                Stream.of(grades().stream().flatMap(this::minimums), first(), others(), eachDay())
                        .flatMap(Function.identity()).toList());
    }

    private List<Wording> grades() {
        return calls.stream().flatMap(call -> call.grades().stream()).map(CallCharge.Hour::grade).distinct().toList();
    }

    private Band band(CallCharge call, List<Tier> tiers) {
        return new Band(in(call.band().name()), sentences.formats().amount(call.serviceCall()),
                grades().stream().map(grade -> hour(call, grade)
                        .map(hour -> sentences.formats().amount(hour.price())).orElse("–")).toList(),
                sentences.formats().amount(call.least()), tiers.stream().map(tier -> response(tier, call)).toList());
    }

    private static Optional<CallCharge.Hour> hour(CallCharge call, Wording grade) {
        return call.grades().stream().filter(hour -> hour.grade().equals(grade)).findFirst();
    }

    /** The least that is billed of a grade; said once where it is the same whenever somebody comes. */
    private Stream<String> minimums(Wording grade) {
        List<String> said = new ArrayList<>();
        List<Integer> all = calls.stream().flatMap(call -> hour(call, grade).stream()).map(CallCharge.Hour::minimum)
                .distinct().toList();
        for (CallCharge call : calls) {
            hour(call, grade).filter(hour -> hour.minimum() > 0).ifPresent(hour -> said.add(all.size() == 1
                    ? sentences.word("calls.minimum", in(grade), sentences.duration(hour.minimum()))
                    : sentences.word("calls.minimum-when", in(grade), in(call.band().name()),
                            sentences.duration(hour.minimum()))));
        }
        return said.stream().distinct();
    }

    /** What is another in the first hour. */
    private Stream<String> first() {
        List<String> said = new ArrayList<>();
        calls.forEach(call -> call.grades().forEach(hour -> hour.firstHour().ifPresent(price -> said.add(sentences
                .word("calls.first-hour", in(hour.grade()), in(call.band().name()),
                        sentences.formats().amount(price))))));
        calls.stream().flatMap(call -> call.includes().stream()).distinct()
                .forEach(minutes -> said.add(sentences.word("calls.includes", sentences.duration(minutes))));
        return said.stream();
    }

    /** What is another on a long visit, and on the road. */
    private Stream<String> others() {
        List<String> said = new ArrayList<>();
        calls.forEach(call -> call.grades().forEach(hour -> hour.overtime().ifPresent(over -> said.add(sentences
                .word("calls.overtime", in(hour.grade()), in(call.band().name()), sentences.duration(over.after()),
                        sentences.formats().amount(over.price()))))));
        calls.forEach(call -> call.grades().forEach(hour -> hour.travel().ifPresent(price -> said.add(sentences
                .word("calls.travel", in(hour.grade()), in(call.band().name()),
                        sentences.formats().amount(price))))));
        return said.stream();
    }

    private Stream<String> eachDay() {
        return calls.stream().flatMap(call -> call.eachDay().stream()).findFirst()
                .map(each -> sentences.word("calls.each-day")).stream();
    }

    private String in(Wording name) {
        return Sentences.capitalized(sentences.in(name));
    }

    private String response(Tier tier, CallCharge call) {
        return Optional.ofNullable(tier.response().get(call.band().id()))
                .map(hours -> sentences.word("calls.within", String.valueOf(hours))).orElse("");
    }
}
