package icequill.answer.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What can be chosen for a visit at a site on a day, in the language of who fills it in.
 *
 * @param site by id
 * @param day by whose rates the visit is priced
 * @param people who were there before, the last first
 * @param classes of what is charged in one's own words
 * @param circumstances that make work dearer, such as a roof or a wait
 * @param fees that apply where they are named
 * @param surcharges the same
 * @param approver whom to ask for more than an order allows; empty where nobody is named
 */
public record VisitChoices(String site, String siteName, LocalDate day, List<KnownTechnician> people,
        List<Choice> grades, List<MachineChoice> machines, List<Part> parts, List<String> classes,
        List<Part> circumstances, List<Choice> fees, List<Choice> surcharges, Optional<Approver> approver) {

    /** One of several, by id and by name. */
    public record Choice(String id, String name) {}

    /**
     * Somebody who was there before.
     *
     * @param grade by id
     */
    public record KnownTechnician(String name, String grade) {}

    /**
     * A machine.
     *
     * @param tasks that suit it
     * @param earlier repairs that were recommended for it before, and are not done
     */
    public record MachineChoice(String id, String name, List<TaskChoice> tasks, List<Earlier> earlier) {

        public MachineChoice {
            earlier = List.copyOf(earlier);
            tasks = List.copyOf(tasks);
        }
    }

    /**
     * A task.
     *
     * @param doses of cleaners and sanitizers that it takes at the machine
     */
    public record TaskChoice(String id, String name, List<ProposedDose> doses) {

        public TaskChoice {
            doses = List.copyOf(doses);
        }
    }

    /**
     * How much of a cleaner or sanitizer a machine takes.
     *
     * @param material by id
     * @param quantity in the unit
     */
    public record ProposedDose(String material, String name, String quantity, String unit) {}

    /**
     * What can be put in, or made work dearer, and in what it is counted.
     *
     * @param partNumber by which its maker knows it
     */
    public record Part(String id, String name, Optional<String> partNumber, String unit) {}

    /**
     * A repair that an earlier visit recommended.
     *
     * @param visit by id
     * @param accepted whether the customer said yes then
     */
    public record Earlier(String visit, LocalDate day, String recommended, boolean accepted) {}

    /** Somebody of the customer's who says yes to more. */
    public record Approver(String name, Optional<String> telephone, Optional<String> email) {}

    public VisitChoices {
        circumstances = List.copyOf(circumstances);
        fees = List.copyOf(fees);
        surcharges = List.copyOf(surcharges);
        people = List.copyOf(people);
        grades = List.copyOf(grades);
        machines = List.copyOf(machines);
        parts = List.copyOf(parts);
        classes = List.copyOf(classes);
    }
}
