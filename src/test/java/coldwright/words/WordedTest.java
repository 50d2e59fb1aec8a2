package coldwright.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;

/** Every constant that has words has them in its package's bundle. */
class WordedTest {
    @Test
    void eachConstantHasItsWords() throws ClassNotFoundException {
        List<Worded> constants = new ArrayList<>();
        for (JavaClass type :
                new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("coldwright.science")) {
            if (type.isEnum() && type.isAssignableTo(Worded.class)) {
                for (Object constant : Class.forName(type.getName()).getEnumConstants()) {
                    constants.add((Worded) constant);
                }
            }
        }
        assertTrue(constants.size() > 50, "too few were found: " + constants.size());
        for (Worded constant : constants) {
            assertNotEquals(constant.phrase().key(), constant.words());
        }
        assertEquals("tree nuts", coldwright.science.mix.Allergen.TREE_NUTS.words());
    }
}
