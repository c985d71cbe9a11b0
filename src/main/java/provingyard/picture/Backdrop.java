package provingyard.picture;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferInt;
import java.awt.image.DirectColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import provingyard.season.Snapshot;
import provingyard.setup.SetUp;

/**
 * The parts of the picture that stand still while only water moves: the ground with all that a minute shows on it, and
 * canopies with roofs. Ground and canopies are kept by day and by night while the view stays, and blended by the light.
 * For one thread at a time.
 */
public final class Backdrop {

    /** A made picture: premultiplied ARGB, row by row from the top; never changed once made. */
    public record Picture(int width, int height, int[] premultiplied) {

        /** An image over the same values. */
        public BufferedImage image() {
            DirectColorModel model = new DirectColorModel(
                    ColorSpace.getInstance(ColorSpace.CS_sRGB),
                    32,
                    0xFF0000,
                    0xFF00,
                    0xFF,
                    0xFF000000,
                    true,
                    DataBuffer.TYPE_INT);
            DataBufferInt data = new DataBufferInt(premultiplied, premultiplied.length);
            WritableRaster raster = Raster.createPackedRaster(
                    data, width, height, width, new int[] {0xFF0000, 0xFF00, 0xFF, 0xFF000000}, null);
            return new BufferedImage(model, raster, true, null);
        }
    }

    private final YardShapes shapes;
    private View view;
    private double density;
    private BufferedImage groundByDay;
    private BufferedImage groundByNight;
    private BufferedImage topByDay;
    private BufferedImage topByNight;

    public Backdrop(YardShapes shapes) {
        this.shapes = shapes;
    }

    /**
     * The ground with wetness, film, ice, pipes, throws and cold air of a minute.
     *
     * @param plan the view in the interface's own theme, its layers and shelter
     * @param pixels to one px of the view
     */
    public Picture ground(View plan, double pixels, Snapshot snapshot) {
        look(plan, pixels);
        Light light = light(plan, snapshot);
        int[] day = null;
        int[] night = null;
        if (light.night() < 1) {
            groundByDay = groundByDay != null ? groundByDay : YardPicture.ground(shapes, view, density);
            day = minute(groundByDay, plan, snapshot);
        }
        if (light.night() > 0) {
            View dark = view.theme(view.theme().night());
            groundByNight = groundByNight != null ? groundByNight : YardPicture.ground(shapes, dark, density);
            night = minute(groundByNight, plan.theme(dark.theme()), snapshot);
        }
        return blended(light, day, night, groundByDay != null ? groundByDay : groundByNight);
    }

    /** Canopies, roofs and vents, transparent elsewhere; with the values of cold air over them where those are shown. */
    public Picture top(View plan, double pixels, SetUp setUp, Snapshot snapshot) {
        look(plan, pixels);
        Light light = light(plan, snapshot);
        if (light.night() < 1 && topByDay == null) {
            topByDay = YardPicture.top(shapes, view, density);
        }
        if (light.night() > 0 && topByNight == null) {
            topByNight = YardPicture.top(shapes, view.theme(view.theme().night()), density);
        }
        BufferedImage any = topByDay != null ? topByDay : topByNight;
        Picture made = blended(light, dataOrNull(topByDay), dataOrNull(topByNight), any);
        if (plan.shows(Layer.COLD) && snapshot != null) {
            Java2DSurface s = new Java2DSurface(made.image());
            s.scale(density, density);
            YardPainter.coldValues(s, shapes, plan.theme(under(plan, snapshot)), setUp, snapshot);
        }
        return made;
    }

    private static Theme under(View plan, Snapshot snapshot) {
        return plan.theme().under(snapshot.sky().sunAltitude());
    }

    private static int[] dataOrNull(BufferedImage image) {
        return image == null ? null : data(image);
    }

    private static Light light(View plan, Snapshot snapshot) {
        return Light.of(plan.theme(), snapshot == null ? null : snapshot.sky());
    }

    private void look(View plan, double pixels) {
        View bare = plan.plain();
        if (!bare.equals(view) || pixels != density) {
            view = bare;
            density = pixels;
            groundByDay = null;
            groundByNight = null;
            topByDay = null;
            topByNight = null;
        }
    }

    private int[] minute(BufferedImage ground, View plan, Snapshot snapshot) {
        BufferedImage copy = new BufferedImage(ground.getWidth(), ground.getHeight(), BufferedImage.TYPE_INT_ARGB_PRE);
        System.arraycopy(data(ground), 0, data(copy), 0, data(copy).length);
        Java2DSurface s = new Java2DSurface(copy);
        s.scale(density, density);
        YardPainter.minute(s, shapes, plan, snapshot);
        return data(copy);
    }

    private static Picture blended(Light light, int[] day, int[] night, BufferedImage size) {
        return new Picture(
                size.getWidth(), size.getHeight(), light.on(day != null ? day : night, night != null ? night : day));
    }

    private static int[] data(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }
}
