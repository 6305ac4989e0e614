package icequill.shop;

import java.nio.file.Path;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The settings and rates of a shop, read when they are first asked for and then kept. For one thread. */
final class SettingsOnce implements Supplier<ShopSettings> {

    private final Path folder;
    private @Nullable ShopSettings read;

    SettingsOnce(Path folder) {
        this.folder = folder;
    }

    @Override
    public ShopSettings get() {
        ShopSettings known = read == null ? ShopSettings.read(folder) : read;
        read = known;
        return known;
    }
}
