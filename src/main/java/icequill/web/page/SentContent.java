package icequill.web.page;

import icequill.files.disk.Hash;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a form said, as a hash. */
final class SentContent {

    private SentContent() {
    }

    /** Of its address, all fields but its key in the order of their names, and the files with it. */
    static String of(Asked asked) {
        Map<String, List<String>> fields = new TreeMap<>(asked.fields());
        fields.remove(PageHandler.KEY);
        List<String> files = asked.uploads().stream().map(file -> file.name() + " " + Hash.of(file.content())).toList();
        return Hash.of((asked.path() + "\n" + fields + "\n" + files).getBytes(StandardCharsets.UTF_8));
    }
}
