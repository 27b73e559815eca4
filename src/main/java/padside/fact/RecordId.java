package padside.fact;

/**
 * Names one record for ever, on every machine: the run of the program and the count of the
 * operation that created it, such as {@code 0123456789abcdef0123.12}; a third number follows where
 * one operation created several. Rows of the motor table are named {@code table.C6}.
 */
public record RecordId(String text) implements Comparable<RecordId> {
  /** Refuses an empty id. */
  public RecordId {
    if (text.isBlank()) {
      throw new IllegalArgumentException("a record id has a text");
    }
  }

  // What a record has by itself the JVM makes at its first use, at every start; so it is written
  // out.
  @Override
  public boolean equals(Object other) {
    return other instanceof RecordId id && text.equals(id.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public int compareTo(RecordId other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
