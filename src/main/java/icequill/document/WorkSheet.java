package icequill.document;

import icequill.party.AccessHours;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.problem.Check;
import icequill.work.Caution;
import icequill.work.MachineState;
import icequill.work.Part;
import icequill.work.Procedure;
import icequill.work.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a technician does on a planned visit, in order, or writes down of a repair. It holds no prices.
 *
 * @param customer whose site it is
 * @param attended as planned
 * @param limit of what the customer pays before tax; empty where there is none
 * @param load what the work is known to take, each once
 * @param schedule empty where nobody made a timetable
 * @param cautions all that are said on the sheet, each once
 */
public record WorkSheet(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        VisitSummary attended, Access access, Optional<Limit> limit, List<Load> load, Optional<Schedule> schedule,
        List<Job> jobs, List<Caution> cautions)
        implements
        Paper {

    /**
     * How to get to the machines.
     *
     * @param contact whom to ask for there
     * @param telephone of the site
     */
    public record Access(Optional<AccessHours> hours, Optional<String> parking, Optional<String> roof,
            Optional<Contact> contact, Optional<String> telephone) {}

    /**
     * Beyond what sum the customer must be asked.
     *
     * @param raisedBy who may allow more, and how he is reached; empty where nobody said
     */
    public record Limit(MonetaryAmount amount, Optional<String> raisedBy) {}

    /** A cleaner, sanitizer, filter or part to take along, named in the paper's language. */
    public record Load(String name, Quantity quantity) {}

    /**
     * The work at one machine.
     *
     * @param reason why it is done, as the office wrote it
     * @param earlier repairs that were recommended before, and are not done
     * @param steps none where a repair is written down that nobody could plan
     */
    public record Job(Machine machine, Optional<String> reason, List<Earlier> earlier, List<Step> steps) {
        public Job {
            earlier = List.copyOf(earlier);
            steps = List.copyOf(steps);
        }

        public boolean isRepair() {
            return steps.isEmpty();
        }
    }

    /**
     * A repair that an earlier visit recommended.
     *
     * @param isWanted whether the customer said yes to it then
     */
    public record Earlier(LocalDate day, String text, boolean isWanted) {}

    /** What kind of thing is done in a step. */
    public enum Kind {
        /** A task of the rates. */
        TASK,
        /** Power off, so that nothing starts. */
        SWITCH_OFF,
        /** Power on again, by whoever took it off. */
        SWITCH_ON
    }

    /**
     * One thing to do.
     *
     * @param name of a task, in the paper's language; empty for switching, which takes no minutes of its own
     * @param part of the machine that it is at
     * @param state the machine is in meanwhile; never {@link MachineState#ANY}
     * @param attended minutes with a technician at the machine
     * @param unattended minutes that pass by themselves afterwards
     * @param turn when it is done, by the sheet's schedule; empty where there is none
     */
    public record Step(Kind kind, String name, Part part, MachineState state, int attended, int unattended,
            Optional<Turn> turn,
            List<Dose> doses, Procedure procedure, List<Caution> cautions) {
        public Step {
            Check.that(state != MachineState.ANY, "no state: " + name);
            Check.that(name.isEmpty() == (kind != Kind.TASK), "name of " + kind + ": " + name);
            doses = List.copyOf(doses);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * When a step is done, in minutes from the beginning of the visit.
     *
     * @param over when nobody is needed any more; at least {@code start}
     * @param until when the next step may begin; at least {@code over}
     * @param people numbers in the schedule's list; none for a step of no minutes
     */
    public record Turn(int start, int over, int until, List<Integer> people) {
        public Turn {
            people = List.copyOf(people);
            Check.inRange(start, 0, over, "start");
            Check.inRange(over, start, until, "over");
        }
    }

    /**
     * How much of a cleaner or sanitizer goes in.
     *
     * @param name in the paper's language
     * @param registration number on its label
     */
    public record Dose(String name, Optional<String> registration, Quantity quantity, Optional<ByLabel> label) {
        public Dose {
            BigDecimal most = label.map(limit -> limit.most().number()).orElse(quantity.number());
            Check.inRange(quantity.number(), BigDecimal.ZERO, most, "dose");
        }
    }

    /** The most that the label allows in the water of the machine. */
    public record ByLabel(Quantity water, Quantity most) {}

    public WorkSheet {
        load = List.copyOf(load);
        jobs = List.copyOf(jobs);
        cautions = List.copyOf(cautions);
    }
}
