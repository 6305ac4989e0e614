package icequill.office.asking;

import java.util.List;
import java.util.stream.Stream;

/**
 * What is to become of a visit that was told.
 *
 * @param file that its form may go into
 */
record ClosingQuestions(Asking asking, Draft visit, String file) {

    private enum Choice {
        STORE, WRITE, BACK, LEAVE
    }

    /**
     * Asks for it.
     *
     * @param priced whether it has a price, without which it is not stored
     */
    Turn.Ask first(boolean priced) {
        List<Choice> choices = Stream.of(Choice.values()).filter(choice -> priced || choice != Choice.STORE).toList();
        return asking.oneOf(asking.question("close"), choices.stream().map(this::text).toList(),
                place -> switch (choices.get(place)) {
                case STORE -> new Turn.Store(visit);
                case WRITE -> asking.text(asking.question("file", file).proposing(file),
                        answer -> new Turn.Write(visit, answer));
                case BACK -> new Turn.Back();
                case LEAVE -> new Turn.Leave();
                });
    }

    private String text(Choice choice) {
        return asking.sentences().word(switch (choice) {
        case STORE -> "ask.close.store";
        case WRITE -> "ask.close.write";
        case BACK -> "ask.close.back";
        case LEAVE -> "ask.close.leave";
        });
    }
}
