/**
 * A shop to begin with, and one to look at; enter at {@link icequill.office.demo.Demo}.
 */
@NullMarked
package icequill.office.demo;

import org.jspecify.annotations.NullMarked;
