/**
 * Bills as XML for the customer's books, in UBL 2.1 and UN/CEFACT CII D16B, by the semantic model of EN 16931 whose terms
 * (BT) and groups (BG) the comments name; enter at {@link icequill.einvoice.EInvoice}.
 *
 * <p>Each code comes from a published list, named where it is used: UNTDID 1001, 4461, 5189 and 7161, UNCL5305, UN 5153,
 * UN/ECE Recommendation 20, VATEX, ISO 3166-1 and ISO 4217.
 */
@NullMarked
package icequill.einvoice;

import org.jspecify.annotations.NullMarked;
