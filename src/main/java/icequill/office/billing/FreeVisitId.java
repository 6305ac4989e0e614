package icequill.office.billing;

import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.life.FreeId;

/** Finds what to call visits that nobody named. */
public record FreeVisitId(ShopBook book) {

    /** As proposed, or the first with a number behind it that the book does not have yet. */
    public String like(String base) {
        return FreeId.like(base, this::isTaken);
    }

    private boolean isTaken(String id) {
        return book.read(open -> Validated.valid(open.entries().visit(id).found().isPresent())).found().orElse(false);
    }
}
