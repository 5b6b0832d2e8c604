package org.amberyard.charts;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes an image with its title and description in UTF-8 text chunks. */
final class PngFile {
    private static final String FORMAT = "javax_imageio_png_1.0";

    private PngFile() {
    }

    static void write(BufferedImage image, String title, String description, OutputStream out) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            ImageWriteParam parameters = writer.getDefaultWriteParam();
            IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), parameters);
            IIOMetadataNode texts = new IIOMetadataNode("iTXt");
            texts.appendChild(text("Title", title));
            texts.appendChild(text("Description", description));
            IIOMetadataNode root = new IIOMetadataNode(FORMAT);
            root.appendChild(texts);
            metadata.mergeTree(FORMAT, root);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, metadata), parameters);
        } finally {
            writer.dispose();
        }
    }

    private static IIOMetadataNode text(String keyword, String value) {
        IIOMetadataNode entry = new IIOMetadataNode("iTXtEntry");
        entry.setAttribute("keyword", keyword);
        entry.setAttribute("compressionFlag", "FALSE");
        entry.setAttribute("compressionMethod", "0");
        entry.setAttribute("languageTag", "en");
        entry.setAttribute("translatedKeyword", keyword);
        entry.setAttribute("text", value);
        return entry;
    }
}
