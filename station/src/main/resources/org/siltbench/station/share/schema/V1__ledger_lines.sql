-- The ledgers of all benches of a lab, line by line, as they stand in the benches' files.
-- Lines are only ever added: a bench's role may insert and select, nothing else, and the trigger
-- refuses a line that does not continue what is here.

create table schema_edition (edition int primary key);
insert into schema_edition values (1);

create table ledger_line (
  bench    text   not null check (bench ~ '^[0-9A-Z]{4}$'),
  seq      bigint not null check (seq > 0),
  prev     text   not null check (prev ~ '^[0-9a-f]{64}$'),
  sum      text   not null check (sum ~ '^[0-9a-f]{64}$'),
  line     text   not null check (octet_length(line) <= 4194304),
  received timestamptz not null default now(),
  primary key (bench, seq),
  -- the last field of a line is the SHA-256 of the bytes before it
  constraint whole check (
    right(line, 74) = ',"sum":"' || sum || '"}'
    and encode(sha256(convert_to(left(line, -74), 'UTF8')), 'hex') = sum)
);

create table ledger_head (
  bench text primary key,
  seq   bigint not null,
  sum   text not null
);

create function continue_ledger() returns trigger
language plpgsql security definer set search_path = ${schema}, pg_temp as $$
declare
  head ledger_head%rowtype;
  known text;
begin
  new.received := now();
  insert into ledger_head values (new.bench, 0, repeat('0', 64)) on conflict do nothing;
  select * into head from ledger_head where bench = new.bench for update;
  if new.seq <= head.seq then
    select sum into known from ledger_line where bench = new.bench and seq = new.seq;
    if known = new.sum then
      return null; -- is here already
    end if;
    raise exception 'bench % has another entry % here', new.bench, new.seq using errcode = 'SB001';
  end if;
  if new.seq <> head.seq + 1 then
    raise exception 'bench % has % entries here, entry % does not follow',
      new.bench, head.seq, new.seq using errcode = 'SB002';
  end if;
  if new.prev <> head.sum then
    raise exception 'bench % has another entry % here', new.bench, head.seq using errcode = 'SB001';
  end if;
  update ledger_head set seq = new.seq, sum = new.sum where bench = new.bench;
  return new;
end $$;

create trigger continue_ledger before insert on ledger_line
  for each row execute function continue_ledger();

create function never_changed() returns trigger language plpgsql as $$
begin
  raise exception 'ledger lines are never changed' using errcode = 'SB003';
end $$;

create trigger never_changed before update or delete or truncate on ledger_line
  for each statement execute function never_changed();
