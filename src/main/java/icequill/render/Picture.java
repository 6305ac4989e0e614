package icequill.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;

/** A picture on white paper: nothing in it is transparent, and it has no more pixels than a printer needs. */
record Picture(BufferedImage image) {

    private static final int MOST_PIXELS_WIDE = 1200;

    /** @throws IOException when there is no such file, or it is no picture */
    static Picture of(Path file) throws IOException {
        BufferedImage image = ImageIO.read(file.toFile());
        if (image == null) {
            throw new IOException("not a picture: " + file.getFileName());
        }
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
