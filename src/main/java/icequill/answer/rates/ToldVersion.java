package icequill.answer.rates;

import icequill.ledger.papers.Adoption;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A version of the rates.
 *
 * @param adopted when and by whom it came into force, the newest first; never, where only papers of an earlier book name it
 * @param inForce whether it is the one by which papers are made now
 * @param papers that were issued by it
 */
public record ToldVersion(String version, List<Adopted> adopted, boolean inForce, long papers) {

    /** The head of a table with {@link #row}. */
    public static final List<String> HEAD = List.of("version", "adopted", "by", "", "papers");

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** That it came into force. */
    public record Adopted(ZonedDateTime at, String who, String office) {

        static Adopted of(Adoption adoption, ZoneId zone) {
            return new Adopted(adoption.at().atZone(zone), adoption.who(), adoption.office());
        }

        private String by() {
            return who + (office.isEmpty() ? "" : " (" + office + ")");
        }

        String text() {
            return TIME.format(at) + " by " + by();
        }
    }

    public ToldVersion {
        adopted = List.copyOf(adopted);
    }

    /**
     * What is told of one.
     *
     * @param adoptions of all versions, the newest first
     */
    public static ToldVersion of(String id, List<Adoption> adoptions, long papers, ZoneId zone) {
        return new ToldVersion(id, adoptions.stream().filter(adoption -> adoption.version().equals(id))
                .map(adoption -> Adopted.of(adoption, zone)).toList(),
                !adoptions.isEmpty() && adoptions.getFirst().version().equals(id), papers);
    }

    private Optional<Adopted> newest() {
        return adopted.stream().findFirst();
    }

    public List<String> row() {
        return List.of(version.isEmpty() ? "none" : version, newest().map(last -> TIME.format(last.at())).orElse(""),
                newest().map(Adopted::by).orElse(""), inForce ? "in force" : newest().isEmpty() ? "not kept" : "",
                String.valueOf(papers));
    }
}
