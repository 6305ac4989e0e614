package icequill.answer.call;

import icequill.files.answer.Sheet;
import java.util.List;
import java.util.stream.Stream;

/** A call that was taken just now, with what is at hand of its site. */
public record TakenCallSheet(CallSheet call, AtHandSheet atHand) implements Sheet {

    /** The call, and what is at hand. */
    public record TakenAnswer(CallAnswer call, AtHand atHand) {}

    @Override
    public TakenAnswer data() {
        return new TakenAnswer(call.data(), atHand.data());
    }

    public List<String> lines() {
        return Stream.concat(call.lines().stream(), atHand.lines().stream()).toList();
    }
}
