package icequill.web.run;

import icequill.problem.Validated;
import icequill.shop.ShopBook;

/** Work that takes long. */
@FunctionalInterface
interface Work {

    /**
     * Does it.
     *
     * @param shop as it is when the work begins
     * @return what it came to
     */
    Validated<? extends RunResult> done(ShopBook shop, Progress progress);
}
