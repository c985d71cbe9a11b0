package provingyard.scenario;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import provingyard.quantity.Dimension;
import provingyard.quantity.In;

/** A place on the yard in m east (x) and north (y) of its south-west corner; in files {@code ["12 ft", "3 ft"]}. */
@JsonFormat(shape = JsonFormat.Shape.ARRAY)
@JsonPropertyOrder({"x", "y"})
public record Point(
        @In(Dimension.LENGTH) double x,
        @In(Dimension.LENGTH) double y) {

    /** Distance to another point in m. */
    public double distance(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return Math.sqrt(dx * dx + dy * dy);
    }
}
