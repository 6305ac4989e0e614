package icequill.office.asking;

import icequill.party.Wording;
import icequill.rates.Applies;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Which fees and surcharges apply, of those that the rates leave open and the law of the site's place allows. */
record FeeQuestions(Setting setting, Function<Draft, Turn> next) {

    /** @param key under which a form names it */
    record Open(String key, String id, Wording name) {}

    boolean isThere() {
        return !open(setting).isEmpty();
    }

    Turn first(Draft draft) {
        List<Open> open = open(setting);
        return setting.asking().someOf(setting.asking().question("fees"),
                Picks.lettered(open.stream().map(each -> setting.sentences().in(each.name())).toList()),
                Picks::letters, "letters",
                places -> next.apply(named(places.stream().sorted().map(open::get).toList(), draft)));
    }

    static List<Open> open(Setting setting) {
        return Stream.concat(
                setting.rates().adjustments().fees().stream().filter(fee -> isOpen(setting, fee.applies()))
                        .map(fee -> new Open("fees", fee.id(), fee.name())),
                setting.rates().adjustments().surcharges().stream()
                        .filter(surcharge -> isOpen(setting, surcharge.applies()))
                        .map(surcharge -> new Open("surcharges", surcharge.id(), surcharge.name())))
                .toList();
    }

    private static boolean isOpen(Setting setting, Applies applies) {
        return !applies.always() && applies.allows(setting.site().address());
    }

    private static Draft named(List<Open> picked, Draft draft) {
        Draft told = draft;
        for (String key : List.of("fees", "surcharges")) {
            List<String> ids = picked.stream().filter(each -> each.key().equals(key)).map(Open::id).toList();
            told = ids.isEmpty() ? told : told.with(key, ids);
        }
        return told;
    }
}
