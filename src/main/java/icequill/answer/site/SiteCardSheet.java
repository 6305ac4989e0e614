package icequill.answer.site;

import icequill.answer.site.SiteCard.CardContact;
import icequill.answer.site.SiteCard.CardMachine;
import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A site at a glance, for the screen in one language and as data. */
public record SiteCardSheet(SiteCard data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(data.name() + ", " + data.kind());
        data.storeNumber().ifPresent(store -> add(lines, "fact.store", store));
        lines.add(String.join(", ", data.address().lines()));
        add(lines, "page.site.pays", data.customerName() + " (" + data.customer() + ")");
        data.telephone().ifPresent(number -> add(lines, "page.site.telephone", number));
        data.access().ifPresent(hours -> lines.add(sentences.word("page.site.access", hours.from(),
                hours.until())));
        data.parking().ifPresent(text -> add(lines, "page.site.parking", text));
        data.roof().ifPresent(text -> add(lines, "page.site.roof", text));
        data.notes().ifPresent(text -> add(lines, "page.site.notes", text));
        data.ahead().forEach(block -> add(lines, "page.site.ahead", block.told()));
        data.agreements().forEach(number -> add(lines, "page.site.agreement", number));
        data.contacts().forEach(contact -> add(lines, "page.site.call", contact(contact)));
        data.machines().forEach(machine -> add(lines, "page.machine", machine(machine)));
        lines.add(data.nextDue().map(day -> sentences.word("page.site.next-due", sentences.formats().day(day)))
                .orElseGet(() -> sentences.word("page.site.no-due")));
        lines.add(sentences.word("page.site.interval", String.valueOf(data.months())));
        data.reasons().forEach(reason -> lines.add("  " + reason));
        return lines;
    }

    private void add(List<String> lines, String key, String text) {
        lines.add(sentences.word(key) + ": " + text);
    }

    private String contact(CardContact contact) {
        return Stream.of(Optional.of(contact.name()), contact.role(), contact.telephone(), contact.email())
                .flatMap(Optional::stream).collect(Collectors.joining(", "))
                + (contact.purposes().isEmpty()
                        ? ""
                        : contact.purposes().stream().map(purpose -> sentences.word("page.purpose."
                                + ConstantKey.of(purpose)))
                                .collect(Collectors.joining(", ", " (", ")")));
    }

    private String machine(CardMachine machine) {
        return machine.name() + machine.lastVisit().map(last -> "; " + sentences.word("page.machine.last") + ": "
                + sentences.formats().day(last.day()) + " (" + last.visit() + ")").orElse("");
    }
}
