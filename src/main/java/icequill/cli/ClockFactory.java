package icequill.cli;

import java.io.BufferedReader;
import java.lang.reflect.Constructor;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands, handing the clock to those that ask for one, and what is typed to those that read it. */
final class ClockFactory implements IFactory {

    private final Clock clock;
    private final BufferedReader typed;

    ClockFactory(Clock clock, BufferedReader typed) {
        this.clock = clock;
        this.typed = typed;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        for (Constructor<?> maker : type.getDeclaredConstructors()) {
            List<Class<?>> asked = List.of(maker.getParameterTypes());
            if (asked.equals(List.of(Clock.class))) {
                return type.cast(maker.newInstance(clock));
            }
            if (asked.equals(List.of(Clock.class, BufferedReader.class))) {
                return type.cast(maker.newInstance(clock, typed));
            }
        }
        return CommandLine.defaultFactory().create(type);
    }
}
