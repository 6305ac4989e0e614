package icequill.office.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Marks that choices have, and the choices that an answer means by them. */
final class Picks {

    private static final int LETTERS = 26;
    private static final String BETWEEN = "[\\s,;]+";

    private Picks() {
    }

    /** Texts numbered from 1. */
    static List<String> numbered(List<String> texts) {
        return IntStream.range(0, texts.size()).mapToObj(i -> i + 1 + "  " + texts.get(i)).toList();
    }

    /** Texts by letters: a to z, then aa, ab and so on. */
    static List<String> lettered(List<String> texts) {
        return IntStream.range(0, texts.size()).mapToObj(i -> letter(i) + "  " + texts.get(i)).toList();
    }

    /** The places of the numbers that an answer lists, each once; empty where one is none of them. */
    static Optional<List<Integer>> numbers(String answer, int count) {
        return places(Stream.of(answer.split(BETWEEN, -1)).filter(word -> !word.isEmpty()),
                IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList());
    }

    /** The place of the one number that an answer is. */
    static Optional<Integer> number(String answer, int count) {
        return numbers(answer, count).filter(found -> found.size() == 1).map(List::getFirst);
    }

    /** The places of the letters that an answer lists; they may stand together as long as each is but one letter. */
    static Optional<List<Integer>> letters(String answer, int count) {
        String between = count > LETTERS ? BETWEEN : "";
        return places(Stream.of(answer.toLowerCase(Locale.ROOT).split(between, -1))
                .filter(word -> !word.matches(BETWEEN) && !word.isEmpty()),
                IntStream.range(0, count).mapToObj(Picks::letter).toList());
    }

    private static Optional<List<Integer>> places(Stream<String> words, List<String> marks) {
        List<Integer> found = new ArrayList<>();
        words.map(marks::indexOf).forEach(found::add);
        return found.isEmpty() || found.contains(-1)
                ? Optional.empty()
                : Optional.of(found.stream().distinct().toList());
    }

    /** The letters of some places, as somebody might answer them; empty for none. */
    static Optional<String> proposal(List<Integer> places) {
        return Optional.of(places.stream().map(Picks::letter).collect(Collectors.joining(" ")))
                .filter(letters -> !letters.isEmpty());
    }

    private static String letter(int place) {
        String last = String.valueOf((char) ('a' + place % LETTERS));
        return place < LETTERS ? last : letter(place / LETTERS - 1) + last;
    }
}
