/**
 * One shop, opened: its folder and its book, and loaders that bring what lies there before the pure packages; enter at
 * {@link icequill.shop.ShopFolder}.
 */
@NullMarked
package icequill.shop;

import org.jspecify.annotations.NullMarked;
