package icequill.files.form;

import icequill.party.Customer;
import icequill.problem.Checked;
import java.util.List;
import java.util.Optional;

/** Sites that stand in no file of the shop folder. It is asked only where there is no file. */
public interface SiteSource {

    /** For a shop that has no book. */
    SiteSource NONE = new SiteSource() {
        @Override
        public Checked<Optional<Stored>> site(String id) {
            return Checked.sound(Optional.empty());
        }

        @Override
        public Checked<List<String>> ids() {
            return Checked.sound(List.of());
        }
    };

    /**
     * A site as it is stored.
     *
     * @param id that it has now, which a merge may have changed
     * @param data of the site itself, in the form of {@link StoredForms}
     * @param machines each in that form
     */
    record Stored(String id, Customer customer, String data, List<String> machines) {
        public Stored {
            machines = List.copyOf(machines);
        }
    }

    /** Empty when there is none of that id. */
    Checked<Optional<Stored>> site(String id);

    /** The ids of all, for a message about an unknown one. */
    Checked<List<String>> ids();
}
