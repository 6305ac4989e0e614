package icequill.render.view;

import java.util.Optional;

/**
 * What a paper is called.
 *
 * @param number that its readers quote; empty where it bears none
 */
record Title(String kind, Optional<String> number) {

    static Title of(String kind) {
        return new Title(kind, Optional.empty());
    }

    /** On one line, as the file and the foot of its pages say it. */
    String text() {
        return number.map(known -> kind + " " + known).orElse(kind);
    }
}
