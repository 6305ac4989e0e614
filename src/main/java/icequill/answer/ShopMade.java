package icequill.answer;

import java.nio.file.Path;

/** A shop folder that was made. */
public record ShopMade(Path shop) {}
