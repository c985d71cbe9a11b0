package provingyard.call;

import java.util.List;
import provingyard.diagnosis.SiteState;

/** A family of tests and the model that says what they give. Safe for several threads. */
interface TestKit {

    /** Its tests, in the order in which they are shown; the same at each call. */
    List<FieldTest> tests();

    /**
     * What a test would give, by computing.
     *
     * @param test one of {@link #tests} that reads something
     * @param state the site as it is when the reading is taken: the legs of the test are done
     */
    Expected expected(FieldTest test, SiteState state, Case wrong);
}
