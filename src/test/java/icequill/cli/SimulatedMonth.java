package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** The office of the simulated year on the last day of a month. */
record SimulatedMonth(BookShop shop, LocalDate first) {

    LocalDate last() {
        return first.plusMonths(1).minusDays(1);
    }

    boolean contains(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last());
    }

    /** What a command says, whether it went well or not. */
    Run run(String... line) {
        return shop.runAt(Clock.fixed(last().atTime(LocalTime.of(17, 0)).toInstant(ZoneOffset.UTC), ZoneOffset.UTC),
                Stream.concat(Stream.of(line), Stream.of("--json")).toArray(String[]::new));
    }

    /** A command that must go well, but for visits that were missed. */
    JsonNode json(String... line) {
        Run run = run(line);
        assertThat(run.status()).as(String.join(" ", line) + run.out() + run.err()).isIn(0, 3);
        assertThat(run.json().path("problems").findValuesAsString("message")).as(String.join(" ", line) + run.out())
                .allMatch(message -> message.contains("is not recorded as done"));
        return run.json();
    }

    /** A command that must be refused for a reason. */
    void refused(String why, String... line) {
        Run run = run(line);
        assertThat(run.status()).as(String.join(" ", line) + run.out()).isEqualTo(3);
        assertThat(run.json().path("problems").findValuesAsString("message")).as(String.join(" ", line))
                .anyMatch(message -> message.contains(why));
    }
}
