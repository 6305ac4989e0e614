-- The letters that a series' numbers begin with, as the shop had set them when its first paper was issued.
ALTER TABLE series ADD COLUMN letters TEXT NOT NULL DEFAULT '';
UPDATE series SET letters = CASE kind
    WHEN 'INVOICE' THEN 'INV'
    WHEN 'CREDIT_NOTE' THEN 'CN'
    WHEN 'MAINTENANCE_QUOTE' THEN 'MQ'
    WHEN 'REPAIR_QUOTE' THEN 'RQ'
    WHEN 'SERVICE_AGREEMENT' THEN 'SA'
    WHEN 'RENEWAL_NOTICE' THEN 'RN'
    WHEN 'VISIT_RECORD' THEN 'VR'
    WHEN 'STATEMENT' THEN 'ST'
    WHEN 'REMINDER' THEN 'RM'
    ELSE '' END;
CREATE UNIQUE INDEX series_text ON series (letters, office, year);
