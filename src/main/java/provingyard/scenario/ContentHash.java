package provingyard.scenario;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;

/**
 * Fingerprint of a document by what it says: names and values in inner units, whatever the file's layout and the units it
 * was written in.
 */
final class ContentHash {

    private final MessageDigest digest;

    private ContentHash(MessageDigest digest) {
        this.digest = digest;
    }

    /** Hexadecimal SHA-256 of a record and all that it holds. */
    static String of(Record document) {
        try {
            ContentHash hash = new ContentHash(MessageDigest.getInstance("SHA-256"));
            hash.take(document);
            return HexFormat.of().formatHex(hash.digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("records of the document are open to their own package", e);
        }
    }

    private void take(Object value) throws ReflectiveOperationException {
        if (value instanceof Record record) {
            put(record.getClass().getSimpleName());
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                Object inner = part.getAccessor().invoke(record);
                if (!isLeftOut(part, inner)) {
                    put(part.getName());
                    take(inner);
                }
            }
        } else if (value instanceof Map<?, ?> map) {
            put("{" + map.size());
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                take(entry.getKey());
                take(entry.getValue());
            }
        } else if (value instanceof Collection<?> list) {
            put("[" + list.size());
            for (Object each : list) {
                take(each);
            }
        } else {
            put(String.valueOf(value));
        }
    }

    private static boolean isLeftOut(RecordComponent part, Object value) {
        LeftOutOfHash later = part.getAnnotation(LeftOutOfHash.class);
        return later != null && value.equals(later.at());
    }

    private void put(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update(bytes);
        digest.update((byte) 0);
    }
}
