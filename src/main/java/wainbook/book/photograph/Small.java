package wainbook.book.photograph;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A photograph made small for a page: upright, on white, without anything the camera wrote into it. Equal bytes give equal bytes.
 *
 * @param width of the printed picture, in the page's pixels
 * @param source a data address
 */
public record Small(int width, int height, String source) {

    private static final int LONGEST_PX = 480;
    /** So that a picture is 5 cm at its longest on paper. */
    private static final double SHARE_ON_PAGE = 188.0 / LONGEST_PX;

    /** What is read is at least so much finer than what is drawn. */
    private static final int FINER = 2;

    private static final long MOST_PX = 120_000_000;
    private static final float QUALITY = 0.72f;

    /** Empty where it cannot be drawn here: another format, damaged, or far too large. */
    public static Optional<Small> of(byte[] photograph) {
        try (var input = new MemoryCacheImageInputStream(new ByteArrayInputStream(photograph))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(input);
            return readers.hasNext()
                    ? read(readers.next(), input).map(picture -> upright(picture, Upright.of(photograph)))
                    : Optional.empty();
        } catch (IOException | RuntimeException unreadable) {
            return Optional.empty();
        }
    }

    /** Every so many pixels only, so that the whole never lies in memory. */
    private static Optional<BufferedImage> read(ImageReader reader, MemoryCacheImageInputStream input)
            throws IOException {
        try {
            reader.setInput(input, true, true);
            long width = reader.getWidth(0);
            long height = reader.getHeight(0);
            if (width * height > MOST_PX) {
                return Optional.empty();
            }
            var asked = reader.getDefaultReadParam();
            int every = (int) Math.max(1, Math.max(width, height) / (FINER * LONGEST_PX));
            asked.setSourceSubsampling(every, every, 0, 0);
            return Optional.of(reader.read(0, asked));
        } finally {
            reader.dispose();
        }
    }

    private static Small upright(BufferedImage stored, int orientation) {
        double scale = Math.min(1, (double) LONGEST_PX / Math.max(stored.getWidth(), stored.getHeight()));
        double width = stored.getWidth() * scale;
        double height = stored.getHeight() * scale;
        boolean side = Upright.onItsSide(orientation);
        int shownWidth = pixels(side ? height : width);
        int shownHeight = pixels(side ? width : height);
        var shown = new BufferedImage(shownWidth, shownHeight, BufferedImage.TYPE_INT_RGB);
        Graphics2D onto = shown.createGraphics();
        try {
            onto.setColor(Color.WHITE);
            onto.fillRect(0, 0, shownWidth, shownHeight);
            onto.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            AffineTransform turned = Upright.turning(orientation, width, height);
            turned.scale(scale, scale);
            onto.drawImage(stored, turned, null);
        } finally {
            onto.dispose();
        }
        return new Small(
                pixels(shownWidth * SHARE_ON_PAGE),
                pixels(shownHeight * SHARE_ON_PAGE),
                "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg(shown)));
    }

    private static int pixels(double length) {
        return Math.max(1, (int) Math.round(length));
    }

    private static byte[] jpeg(BufferedImage picture) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var output = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam asked = writer.getDefaultWriteParam();
            asked.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            asked.setCompressionQuality(QUALITY);
            writer.setOutput(output);
            writer.write(null, new IIOImage(picture, null, null), asked);
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
