package provingyard.world.electric;

/**
 * A small dense system of complex linear equations, solved by Gaussian elimination with the largest pivot of each
 * column. Some tens of unknowns: the cube of their number is a few hundred thousand operations.
 */
final class ComplexMatrix {

    private final int size;
    private final double[][] re;
    private final double[][] im;

    /** Zeros; the right side is the last column. */
    ComplexMatrix(int size) {
        this.size = size;
        re = new double[size][size + 1];
        im = new double[size][size + 1];
    }

    /** Adds to a coefficient. */
    void add(int row, int column, Complex value) {
        re[row][column] += value.re();
        im[row][column] += value.im();
    }

    /** Adds to a right side. */
    void addRight(int row, Complex value) {
        add(row, size, value);
    }

    /** The unknowns; the matrix is used up. */
    Complex[] solve() {
        for (int k = 0; k < size; k++) {
            bringPivot(k);
            for (int row = k + 1; row < size; row++) {
                if (re[row][k] != 0 || im[row][k] != 0) {
                    eliminate(row, k);
                }
            }
        }
        return backwards();
    }

    private void bringPivot(int k) {
        int best = k;
        for (int row = k + 1; row < size; row++) {
            if (square(row, k) > square(best, k)) {
                best = row;
            }
        }
        if (!(square(best, k) > 0)) {
            throw new IllegalStateException("The circuit's equations have no single solution");
        }
        double[] keptRe = re[k];
        double[] keptIm = im[k];
        re[k] = re[best];
        im[k] = im[best];
        re[best] = keptRe;
        im[best] = keptIm;
    }

    private double square(int row, int column) {
        return re[row][column] * re[row][column] + im[row][column] * im[row][column];
    }

    private void eliminate(int row, int k) {
        Complex factor = at(row, k).over(at(k, k));
        for (int column = k; column <= size; column++) {
            double a = re[k][column];
            double b = im[k][column];
            re[row][column] -= factor.re() * a - factor.im() * b;
            im[row][column] -= factor.re() * b + factor.im() * a;
        }
    }

    private Complex[] backwards() {
        Complex[] unknowns = new Complex[size];
        for (int row = size - 1; row >= 0; row--) {
            Complex rest = at(row, size);
            for (int column = row + 1; column < size; column++) {
                rest = rest.minus(at(row, column).times(unknowns[column]));
            }
            unknowns[row] = rest.over(at(row, row));
        }
        return unknowns;
    }

    private Complex at(int row, int column) {
        return new Complex(re[row][column], im[row][column]);
    }
}
