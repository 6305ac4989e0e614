package icequill.office.billing;

import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds what to call visits that nobody named. */
public record FreeVisitId(ShopBook book) {

    /** As proposed, or the first with a number behind it that the book does not have yet. */
    public String like(String base) {
        return Stream.concat(Stream.of(base), IntStream.iterate(2, i -> i + 1).mapToObj(i -> base + "-" + i))
                .filter(this::isFree).findFirst().orElseThrow();
    }

    private boolean isFree(String id) {
        return book.read(open -> Validated.valid(open.entries().visit(id).found().isEmpty())).found().orElse(true);
    }
}
