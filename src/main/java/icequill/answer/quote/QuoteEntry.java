package icequill.answer.quote;

import icequill.answer.forecast.ForecastInputs.Dirt;
import icequill.answer.forecast.ForecastInputs.Guess;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What can be chosen for a maintenance quote on a day, in the language of who fills it in.
 *
 * @param site by id; missing, like its name, for a customer whom the book does not have yet
 * @param day by whose prices it is quoted
 * @param start the first day of the term that is proposed
 * @param machines of the site; none where they are still to be told
 * @param findings that a survey of a machine may have
 * @param scopes kinds of visits of the plans
 * @param kinds of sites, and {@code taxPlaces}: for a new customer
 * @param recommended months between full cleanings, and why; missing where the site is not known
 * @param lastYear the twelve months before the day, as the book has them; missing where nobody was at the site
 * @param guesses by which is forecast; missing where the shop has nothing to forecast by
 */
public record QuoteEntry(Optional<String> site, Optional<String> siteName, LocalDate day, LocalDate start,
        List<MachineChoice> machines, List<Choice> findings, List<Choice> plans, List<Choice> scopes,
        List<Choice> grades, List<Choice> kinds, List<Choice> taxPlaces,
        Optional<QuoteFigures.Recommended> recommended, Optional<LastYear> lastYear, Optional<Guesses> guesses) {

    /** One of several, by id and by name. */
    public record Choice(String id, String name) {}

    /**
     * A machine.
     *
     * @param condition as the book has it
     * @param hasCondenser whether it has one to brush
     * @param isForCustomer whether the customer's own people may brush it if they can reach it
     */
    public record MachineChoice(String id, String name, Optional<String> condition, boolean hasCondenser,
            boolean isForCustomer) {}

    /** How often somebody was at the site, and how often of that because he was called. */
    public record LastYear(int visits, int calls) {}

    /**
     * The shop's, for sites of the kind.
     *
     * @param condenser and {@code water}: of twenty machines that nobody cleans, how many stop by month 6 and by month 12
     */
    public record Guesses(Guess faults, Dirt condenser, Dirt water) {}

    public QuoteEntry {
        machines = List.copyOf(machines);
        findings = List.copyOf(findings);
        plans = List.copyOf(plans);
        scopes = List.copyOf(scopes);
        grades = List.copyOf(grades);
        kinds = List.copyOf(kinds);
        taxPlaces = List.copyOf(taxPlaces);
    }
}
