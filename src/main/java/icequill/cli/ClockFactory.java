package icequill.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands, handing the clock to those that ask for one. */
final class ClockFactory implements IFactory {

    private final Clock clock;

    ClockFactory(Clock clock) {
        this.clock = clock;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        try {
            return type.cast(type.getDeclaredConstructor(Clock.class).newInstance(clock));
        } catch (NoSuchMethodException withoutClock) {
            return CommandLine.defaultFactory().create(type);
        }
    }
}
