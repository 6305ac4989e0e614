package icequill.render.pdf;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** A picture on white paper: nothing in it is transparent, and it has no more pixels than a printer needs. */
public record Picture(BufferedImage image) {

    private static final int MOST_PIXELS_WIDE = 1200;
    private static final long MOST_BYTES = 20_000_000;
    private static final long MOST_PIXELS = 25_000_000;

    /** @throws IOException when there is no such file, or it is no picture */
    static Picture of(Path file) throws IOException {
        BufferedImage image = read(file);
        double scale = Math.min(1, (double) MOST_PIXELS_WIDE / image.getWidth());
        int width = Math.max(1, (int) (image.getWidth() * scale));
        int height = Math.max(1, (int) (image.getHeight() * scale));
        BufferedImage flat = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = flat.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(image, 0, 0, width, height, null);
        graphics.dispose();
        return new Picture(flat);
    }

    /** Looks at what the file says of its size before any of it is unpacked. */
    private static BufferedImage read(Path file) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new IOException("no ordinary file");
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException("it has " + Files.size(file) + " bytes, and may have " + MOST_BYTES);
        }
        try (ImageInputStream stream = new MemoryCacheImageInputStream(
                new ByteArrayInputStream(Files.readAllBytes(file)))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException("it is no picture");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream, true, true);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                if (pixels > MOST_PIXELS) {
                    throw new IOException("it has " + pixels + " pixels, and may have " + MOST_PIXELS);
                }
                return reader.read(0);
            } finally {
                reader.dispose();
            }
        } catch (RuntimeException broken) {
            throw new IOException("it is no picture that can be read", broken);
        }
    }

    byte[] png() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** As an address that holds the picture itself (RFC 2397), so that a page needs no other file. */
    String data() {
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(png());
    }
}
