package icequill.web;

import icequill.answer.ShopFacts;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopFolder;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** How the shop is set up. */
final class ShopPage implements Page {

    @Override
    public Answer answer(Asked asked) {
        ShopFolder folder = BookForms.shop(asked.book());
        return Answer.of("shop", folder.shop()
                .map(shop -> Validated.valid(ShopFacts.of(shop, asked.book().folder(), asked.book().isShared())))
                .orElseGet(() -> new Validated.Invalid<>(folder.problems())));
    }
}
