package icequill.office.billing;

import icequill.answer.BookedPaper;
import icequill.answer.paper.IssuedPapers;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Bills many things, as many at once as there are processors: some are prepared beside each other, then stored by one transaction, in
 * their order. The first is billed at once, and what is billed together doubles from there. What is stopped, or killed, loses no more
 * than such a batch; what cannot be billed does not hold up the rest.
 *
 * @param book held open
 * @param source what it is billed from; two of one source are never billed by one transaction, since what the first was billed at may count
 *        for the second. Empty for what is billed by itself
 * @param alone bills one of them
 * @param problem says of which a problem is
 */
record BillingRun<I>(ShopBook book, boolean isTrial, Function<I, Optional<String>> source,
        Function<I, Validated<PendingWrite<BookedPaper>>> prepare, Function<I, Validated<BookedPaper>> alone,
        BiFunction<I, Problem, Problem> problem) {

    /** Long enough for what is forced to the disk once to cost little, and short enough for a person who watches. */
    private static final int MOST = 32;

    /** @param along is told what came of each, and says whether to go on after what was begun */
    IssuedPapers each(List<I> all, Predicate<Validated<BookedPaper>> along) {
        Problems problems = new Problems();
        List<BookedPaper> issued = new ArrayList<>();
        int most = 1;
        boolean goesOn = true;
        for (int from = 0; from < all.size() && goesOn; most = Math.min(2 * most, MOST)) {
            List<I> batch = batch(all.subList(from, all.size()), isTrial ? 1 : most);
            List<Validated<BookedPaper>> papers = billed(batch);
            for (int i = 0; i < batch.size(); i++) {
                I one = batch.get(i);
                papers.get(i).found().ifPresent(issued::add);
                papers.get(i).problems().stream().map(found -> problem.apply(one, found)).forEach(problems::add);
                goesOn &= along.test(papers.get(i));
            }
            from += batch.size();
        }
        return new IssuedPapers(issued, isTrial, problems.list());
    }

    private List<I> batch(List<I> rest, int most) {
        List<I> batch = new ArrayList<>();
        Set<String> sources = new HashSet<>();
        for (I one : rest) {
            Optional<String> of = batch.size() < most ? source.apply(one) : Optional.empty();
            if (of.isEmpty() || !sources.add(of.get())) {
                break;
            }
            batch.add(one);
        }
        return batch.isEmpty() ? List.of(rest.getFirst()) : batch;
    }

    private List<Validated<BookedPaper>> billed(List<I> batch) {
        if (batch.size() == 1) {
            return List.of(alone.apply(batch.getFirst()));
        }
        List<Validated<PendingWrite<BookedPaper>>> prepared = book.each(batch, prepare);
        return book.write(open -> Validated.valid(open.inTurn(prepared.stream()
                .flatMap(ready -> ready.found().stream()).map(PendingWrite::work).toList())))
                .map(stored -> together(prepared, stored.iterator())).found()
                // Where printing one of them is at fault none is stored; then that one has to be found.
                .orElseGet(() -> batch.stream().map(alone).toList());
    }

    private static List<Validated<BookedPaper>> together(List<Validated<PendingWrite<BookedPaper>>> prepared,
            Iterator<Validated<BookedPaper>> stored) {
        return prepared.stream().map(ready -> ready.then(work -> stored.next())).toList();
    }
}
