package icequill.answer.days;

import icequill.answer.days.Announcements.Visit;
import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Planned visits and whether customers know of them, for the screen in one language and as data. */
public record AnnouncementSheet(Announcements data, Sentences sentences) implements Sheet {

    /** All of it, line by line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (data.visits().isEmpty()) {
            lines.add(sentences.word("announce.none"));
        }
        data.visits().forEach(visit -> lines.add(when(visit) + ": " + visit.siteName() + ", "
                + String.join(", ", visit.people()) + "; " + state(visit) + " (" + visit.visit() + ")"));
        data.files().stream().map(Path::toString).forEach(lines::add);
        return lines;
    }

    /** When somebody comes. */
    public String when(Visit visit) {
        return sentences.formats().day(visit.begins().toLocalDate()) + ", "
                + sentences.formats().time(visit.begins().toLocalTime()) + " – "
                + sentences.formats().time(visit.ends().toLocalTime());
    }

    /** Whether the customer knows. */
    public String state(Visit visit) {
        return sentences.word("announce.state." + ConstantKey.of(visit.state()),
                visit.told().map(sentences.formats()::day).orElse(""),
                visit.way().map(way -> sentences.word("announce.way." + ConstantKey.of(way))).orElse(""));
    }

    /** The same with papers that were written. */
    public AnnouncementSheet with(List<Path> written) {
        return new AnnouncementSheet(data.with(written), sentences);
    }
}
