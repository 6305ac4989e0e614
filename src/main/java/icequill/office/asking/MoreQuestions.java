package icequill.office.asking;

import icequill.explain.ConstantKey;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What few visits have, by the letters of one question: a person's divided time, circumstances, fees, readings, refrigerant, a side. */
record MoreQuestions(Setting setting, Function<Draft, Turn> next) {

    private enum Kind {
        DIVIDED_TIME, CIRCUMSTANCES, FEES, READINGS, REFRIGERANT, SIDE
    }

    Turn first(Draft draft) {
        List<Kind> kinds = Stream.of(Kind.values()).filter(kind -> isThere(kind, draft)).toList();
        List<Integer> likely = setting.site().circumstances().isEmpty() || !kinds.contains(Kind.CIRCUMSTANCES)
                ? List.of()
                : List.of(kinds.indexOf(Kind.CIRCUMSTANCES));
        return setting.asking().someOf(setting.asking().question("more").proposing(Picks.proposal(likely)),
                Picks.lettered(kinds.stream().map(this::text).toList()), Picks::letters, "letters",
                places -> each(places.stream().sorted().map(kinds::get).toList(), draft));
    }

    /** Whether the shop's rates, and what was told so far, have anything to ask about. */
    private boolean isThere(Kind kind, Draft draft) {
        return switch (kind) {
        case DIVIDED_TIME -> true;
        case CIRCUMSTANCES -> !setting.rates().adjustments().modifiers().isEmpty();
        case FEES -> new FeeQuestions(setting, next).isThere();
        case READINGS, REFRIGERANT -> !draft.rows("machines").isEmpty();
        case SIDE -> !draft.rows("machines").isEmpty() && draft.values().containsKey("asked");
        };
    }

    private String text(Kind kind) {
        return setting.sentences().word("ask.more." + ConstantKey.of(kind));
    }

    private Turn each(List<Kind> left, Draft draft) {
        if (left.isEmpty()) {
            return next.apply(draft);
        }
        Function<Draft, Turn> rest = told -> each(left.subList(1, left.size()), told);
        return switch (left.getFirst()) {
        case DIVIDED_TIME -> new DividedTimeQuestions(setting, rest).first(draft);
        case CIRCUMSTANCES -> new CircumstanceQuestions(setting, rest).first(draft);
        case FEES -> new FeeQuestions(setting, rest).first(draft);
        case READINGS -> new ReadingQuestions(setting, rest).first(draft);
        case REFRIGERANT -> new RefrigerantQuestions(setting, rest).first(draft);
        case SIDE -> new SideQuestions(setting, rest).first(draft);
        };
    }
}
