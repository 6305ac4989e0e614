package icequill.web.run;

import java.util.function.LongConsumer;

/** What long work tells how far it is. */
interface Progress extends LongConsumer {

    /**
     * That so much is done.
     *
     * @throws RuntimeException which leads out of the work, when it was asked to stop
     */
    @Override
    default void accept(long soFar) {
        if (!goesOn(soFar)) {
            throw new Stopped();
        }
    }

    /** The same for work that ends by itself when it is told to. */
    boolean goesOn(long soFar);

    /** Thrown where work is that was asked to stop; what it had not finished is undone. */
    final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;
    }
}
