/**
 * How a number was figured: a {@link icequill.explain.Figure} that computes the number, with the reasons behind it; enter
 * at {@link icequill.explain.Explanation}.
 *
 * <p>The printed form of an explanation follows one grammar, which other programs may read and work out again:
 *
 * <pre>
 * how    = figure " = " number
 * figure = term { (" + " | " - ") term }
 * term   = factor { (" x " | " / ") factor }
 * factor = number [ " " unit ] | "(" figure ")"
 *        | "round(" figure "; " name "; " digits ")"      half up, to so many decimals
 *        | "up(" figure "; " number ")"                   up to the next full multiple of the number
 *        | "step(" figure "; " ( "nearest" | "down" ) "; " number ")"
 *                                                         to the nearest full multiple of the number, half up, or down to one
 *        | "power(" figure "; " digits ")"                multiplied by itself: as many factors as the digits say
 *        | "share(" number "; " number { " : " number } "; " place "; " digits ")"
 *                                                         largest remainder: the share of the place-th weight, from 1
 * number = ["-"] digits [ "." digits ]
 * unit   = "%" | letters, digits, "/" and "_"              "%" divides by a hundred, any other unit is a label
 * </pre>
 *
 * <p>The reasons are no part of it: they are said beside it, as sentences.
 */
@NullMarked
package icequill.explain;

import org.jspecify.annotations.NullMarked;
