package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.TreeJson;
import icequill.problem.Problems;
import icequill.work.Call;
import java.time.ZoneId;
import java.util.Optional;

/** Why a visit took place, read off its stored form without holding it against its schema: lists go through all visits of a book. */
public record AskedFor(ZoneId zone) {

    /**
     * Who asked for a visit, when and why; empty where nobody did.
     *
     * @param data as the book has it; blank once it was forgotten
     */
    public Optional<Call> of(String data) {
        LocalMoments times = new LocalMoments(zone);
        return new Fields(TreeJson.branch(data, ""), new Problems()).child("asked").flatMap(asked -> times
                .at(asked, "at").map(at -> new Call(asked.id("call"), asked.text("by").orElse(""), at,
                        asked.text("symptom").orElse(""), times.at(asked, "promised"))));
    }
}
